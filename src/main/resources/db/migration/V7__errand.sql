-- One garment for one event from one cloth, as somebody keeps it. The time repeats that of the body, to list the newest first.
create table errand (
    id uuid primary key,
    body jsonb not null,
    created_at timestamptz not null
);
create index errand_by_time on errand (created_at desc, id);
