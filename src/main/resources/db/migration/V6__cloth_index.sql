-- What cloths are searched by, one row for each that is in the catalogue. Made from the table cloth and kept up by its ticks; can be
-- emptied at any time, together with the state, and is then made again.
create table cloth_index (
    cloth_id text primary key references cloth (id) on delete cascade,
    -- Words of the name, without accents, in lower case.
    name text collate "C" not null,
    -- The same and the names of the fibres, for names that are only nearly alike.
    near text collate "C" not null,
    -- Words of the name (A), the composition (B), the note (C).
    words tsvector not null,
    fibres text[] not null,
    weight_gsm double precision,
    weight_class text,
    seasons text[] not null,
    fire_grade text not null,
    price_per_metre double precision
);
create index cloth_index_words on cloth_index using gin (words);
create index cloth_index_near on cloth_index using gin (near gin_trgm_ops);
create index cloth_index_fibres on cloth_index using gin (fibres);
create index cloth_index_seasons on cloth_index using gin (seasons);
create index cloth_index_by_name on cloth_index (name, cloth_id);
create index cloth_index_by_weight on cloth_index (weight_gsm);
create index cloth_index_by_weight_class on cloth_index (weight_class);
create index cloth_index_by_fire_grade on cloth_index (fire_grade);
create index cloth_index_by_price on cloth_index (price_per_metre);

-- How far the index has come: all changes up to the tick; of the tick itself only those up to an id, where one is given. And the
-- rules by which it was computed.
create table cloth_index_state (
    only_row boolean primary key default true check (only_row),
    tick bigint not null,
    through_id text,
    rules text not null
);
insert into cloth_index_state (tick, rules) values (-1, '');
