alter table numbered add column rank integer not null default 7;
update numbered set rank = 8 where boss is not null;
