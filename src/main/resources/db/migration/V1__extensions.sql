-- Search by parts of words, also misspelt ones.
create extension if not exists pg_trgm;
