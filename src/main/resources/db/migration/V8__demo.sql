-- Whether it was ever looked at if the demo is to be put in: the first start decides, no later one does again.
create table demo_decided (
    only_row boolean primary key default true check (only_row),
    decided_at timestamptz not null
);

-- What the demo put in, at which version it left it, and when it was removed again. What has another version by now was changed by
-- somebody and is theirs.
create table demo_thing (
    kind text not null check (kind in ('EVENT', 'CLOTH')),
    key text not null,
    thing_id text not null,
    version bigint not null,
    name text not null,
    place integer not null,
    removed_at timestamptz,
    primary key (kind, key)
);
