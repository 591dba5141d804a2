-- Work that takes long, kept until it is done and for a week after. What is asked and what came of it is kept as text (json, not
-- jsonb: it is never looked into, and may hold characters that jsonb refuses). The payload is a list, packed by gzip. A claim holds
-- until lease_until; whoever does anything to a job that runs names the claim.
create table job (
    id uuid primary key,
    kind text not null,
    state text not null check (state in ('QUEUED', 'RUNNING', 'DONE', 'FAILED', 'CANCELLED')),
    request json not null,
    payload bytea,
    payload_bytes bigint not null default 0,
    keeps_payload boolean not null,
    progress json not null default '{}',
    result json,
    failure json,
    owner uuid,
    roles text[] not null,
    attempts integer not null default 0,
    cancel_asked boolean not null default false,
    claim uuid,
    lease_until timestamptz,
    not_before timestamptz not null,
    made_at timestamptz not null,
    started_at timestamptz,
    ended_at timestamptz
);
create index job_to_do on job (made_at, id) where state in ('QUEUED', 'RUNNING');
create index job_by_owner on job (owner, made_at desc, id);
create index job_by_end on job (ended_at) where ended_at is not null;
