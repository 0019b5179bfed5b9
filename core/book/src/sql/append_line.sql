INSERT INTO ink (time, device, act, clock, odd, kind, subject, property, visit, value, undoes_time, undoes_device)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)
