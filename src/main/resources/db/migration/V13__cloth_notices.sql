-- Whoever moves the clock of the cloths on lets every instance that listens know, once that is committed. An instance that hears
-- nothing still looks at the clock at each use: this only has it look sooner.
create function cloth_clock_moved() returns trigger language plpgsql as $$
begin
    perform pg_notify('campcloth_cloth', '');
    return null;
end
$$;

create trigger cloth_clock_moved after update of tick on cloth_clock
    for each row when (old.tick is distinct from new.tick) execute function cloth_clock_moved();
