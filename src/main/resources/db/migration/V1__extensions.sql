-- For searching by parts of words.
create extension if not exists pg_trgm;
