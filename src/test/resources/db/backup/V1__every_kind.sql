-- Every kind of column and link that a backup may meet, whether the service has it by now or not.
create table numbered (
    id bigint generated always as identity primary key,
    name text not null,
    shouted text generated always as (upper(name)) stored,
    boss bigint references numbered (id)
);
create table serial_one (id bigserial primary key, at timestamptz not null default now(), weight double precision, raw bytea, parts text[], unsortable json, point point);
create table left_hand (id text primary key);
create table right_hand (id text, place integer, other text not null references left_hand (id), primary key (place, id));
alter table left_hand add column first_right text, add column first_place integer,
    add foreign key (first_place, first_right) references right_hand (place, id);
create table no_key (name text, checked integer check (checked > 0), free json);
create table seen (only_row boolean primary key default true, times bigint not null);
insert into seen (times) values (0);
create function count_seen() returns trigger language plpgsql as $$ begin update seen set times = times + 1; return null; end $$;
create trigger numbered_seen after insert on numbered for each statement execute function count_seen();
create sequence never_asked;
