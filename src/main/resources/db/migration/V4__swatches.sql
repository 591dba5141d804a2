-- What people measured on pieces of a cloth; number counts the swatches of a cloth in the order they were told. The figures that
-- follow stand in the cloth's body, beside those that were known before any swatch (beforeSwatches).
create table cloth_swatch (
    id uuid primary key,
    cloth_id text not null references cloth (id) on delete cascade,
    number bigint not null,
    body jsonb not null,
    made_at timestamptz not null,
    unique (cloth_id, number)
);
