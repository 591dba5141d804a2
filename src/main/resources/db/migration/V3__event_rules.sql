-- Every version of an event's rules, as they stood; written with the event and never changed. Goes when the event goes.
create table event_rules (
    event_id uuid not null references event (id) on delete cascade,
    version bigint not null,
    rules jsonb not null,
    kept_at timestamptz not null,
    primary key (event_id, version)
);
insert into event_rules (event_id, version, rules, kept_at)
    select id, version, coalesce(body -> 'rules', '[]'::jsonb), changed_at from event;
