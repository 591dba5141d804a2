-- Under which key of which supplier a cloth came with a list, and what the list said of it the last time: a cloth in the form of
-- cloth.body. What a user changed since is told from what the list said by comparing the two.
create table cloth_listing (
    supplier text not null,
    supplier_key text not null,
    cloth_id text not null unique references cloth (id),
    said jsonb not null,
    primary key (supplier, supplier_key)
);
