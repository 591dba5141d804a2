-- Calls that make something and carry a key, so that the same call sent again makes nothing new. call names operation and key
-- (SHA-256), fingerprint what was sent. What the call makes has ids that follow from seed: it is committed before the work begins, so
-- that a call that was cut short finds what it made. While status is empty the call is worked on, or was cut short.
create table keyed_call (
    asker text not null,
    call text not null,
    fingerprint text not null,
    seed uuid not null,
    claimed_at timestamptz not null,
    busy_until timestamptz,
    status integer,
    headers json,
    body text,
    primary key (asker, call)
);
create index keyed_call_by_time on keyed_call (claimed_at);
