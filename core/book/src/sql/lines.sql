SELECT ink.time, ink.device, ink.act, ink.clock, ink.odd, ink.kind, ink.subject, ink.property, ink.visit, ink.value,
       ink.undoes_time, ink.undoes_device
FROM ink
