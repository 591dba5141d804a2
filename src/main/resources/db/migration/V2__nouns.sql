-- One row: counts the changes of the cloth table. Whoever changes a cloth moves it on in the same transaction, so that
-- changes become visible in the order of their ticks and a reader can fetch just what is newer than what it has.
create table cloth_clock (
    only_row boolean primary key default true check (only_row),
    tick bigint not null
);
insert into cloth_clock (tick) values (0);

-- Cloths from the catalogue files and those that users added. The columns at the end repeat figures of the body for whoever
-- looks at the table with SQL; the service reads the body.
create table cloth (
    id text primary key,
    version bigint not null,
    tick bigint not null,
    origin text not null check (origin in ('CATALOGUE', 'EDITED', 'OWN')),
    removed_by text check (removed_by in ('USER', 'CATALOGUE')),
    catalogue_digest text,
    body jsonb not null,
    changed_at timestamptz not null default now(),
    name text not null generated always as (body ->> 'name') stored,
    weight_gsm double precision generated always as ((body #>> '{figures,weightGsm,value}')::double precision) stored,
    thickness_mm double precision generated always as ((body #>> '{figures,thicknessMm,value}')::double precision) stored,
    air_permeability_mm_s double precision
        generated always as ((body #>> '{figures,airPermeabilityMmS,value}')::double precision) stored,
    vapour_resistance_m2pa_w double precision
        generated always as ((body #>> '{figures,vapourResistanceM2PaW,value}')::double precision) stored
);
create index cloth_by_tick on cloth (tick);

create table event (
    id uuid primary key,
    version bigint not null,
    body jsonb not null,
    made_at timestamptz not null default now(),
    changed_at timestamptz not null default now()
);

create table cutting_plan (
    id uuid primary key,
    body jsonb not null,
    made_at timestamptz not null default now()
);
