# The second look and the doorstep: read in the sun, at arm's length, so short.
# Names of parts, remedies and courses begin with a capital: let them begin a sentence or follow a colon.

doorstep-sentences = { $first } { $next }

# --- parts and places
doorstep-part = { $kind } { $address }
doorstep-part-which = { $part }, { $which }
doorstep-part-in = { $part } ({ $structure })
doorstep-slope = Vertiente { $letter }
doorstep-of-structure = { $structure }. { $said }

# --- work, whose it was, and when
doorstep-work-on = { $what }. { $by }, el { $when }.
doorstep-work-by = { $what }. { $by }, a más tardar el { $when }.
doorstep-work-since = { $where }: { $work }
doorstep-so-told = Así nos lo contaron.

# --- dangers
doorstep-danger-met = El { $on }: { $what }.
doorstep-danger-found = { $part }, el { $on }: { $what }.

# --- a verdict in a sentence
doorstep-step = { $when }: { $course }.
doorstep-step-with = { $when }: { $course }. { $remedies }.
doorstep-no-verdict = No aconsejamos nada: se vio muy poco.
doorstep-found = { $part }: { $rung }.
doorstep-found-advised = { $part }: { $rung }. Aconsejado: { $remedies }.

# --- the request against it
doorstep-asked-done = Lo que aconsejamos el { $on } ya se hizo.
doorstep-asked-forbidden = { $asked }: aquí el código no lo permite. Lo dijimos el { $on }.
doorstep-asked-refused = { $asked }: a eso dijimos que no el { $on }. Aconsejado: { $course }.
doorstep-asked-worsens = { $asked }: eso lo empeora. Se encontró: { $defect }.
doorstep-asked-referred = { $asked }: no es trabajo nuestro. El { $on } los mandamos con { $who }.
doorstep-asked-buys-time = { $asked }: eso gana de { $least } a { $most } meses y no cura nada. Se encontró: { $defect }.
doorstep-asked-first-step = { $asked }: eso es solo el primer paso. Aconsejado el { $on }: { $course }.
doorstep-asked-step-over = { $asked }: eso debía aguantar hasta el { $until }. Aconsejado: { $course }.
doorstep-asked-smaller = { $asked }: es menos de lo que aconsejamos el { $on }. Aconsejado: { $course }.
doorstep-asked-larger = { $asked }: es más de lo que aconsejamos el { $on }. Aconsejado: { $course }.
doorstep-asked-agrees = { $asked }: es lo que aconsejamos el { $on }.
doorstep-asked-for = { $asked }: el { $on } aconsejamos: { $remedies }.
doorstep-asked-look-first = { $asked }: el { $on } no podíamos decir nada sin una revisión de cerca.

# --- patches
doorstep-patched =
    { $count ->
        [one] { $part }: un parche hasta ahora. Causa: { $cause }.
       *[other] { $part }: { $count } parches hasta ahora. Causa: { $cause }.
    }
doorstep-lasted = Aguantó { $each }.
doorstep-lasted-one =
    { $months ->
        [one] como mucho 1 mes desde el { $when }
       *[other] como mucho { $months } meses desde el { $when }
    }
doorstep-one-more = { $remedy }: sería el parche número { $number }.
doorstep-patch-limit =
    { $limit ->
        [one] Nuestro límite es 1.
       *[other] Nuestro límite es { $limit }.
    }

# --- offers and answers
doorstep-offered = Carta del { $on }. { $said }
doorstep-offered-course = { $course }.
doorstep-offered-for = { $structure }: { $course }.
doorstep-answered = { $came }, el { $on }.
doorstep-answered-saying = { $came }, el { $on }: “{ $words }”
doorstep-no-answer-yet = Sin respuesta hasta ahora.

# --- what was not seen
doorstep-never-seen = Sin ver nunca: { $parts }. { $why }.
doorstep-not-seen-again = Con fallas y sin volver a ver: { $parts }. { $why }.
doorstep-covered = Debajo de otra cosa, sin poder juzgarse: { $parts }.
doorstep-only-from-ground = { $structure }: solo se ha visto desde el suelo.
doorstep-only-from-inside = { $structure }: solo se ha visto desde adentro.
doorstep-never-reached = { $structure }: nunca se ha llegado hasta ahí.

# --- what is due
doorstep-due = { $because }: tocaba el { $on }.
doorstep-due-later = { $because }: para el { $on }.
doorstep-cover-until = La protección temporal debía aguantar hasta el { $until }.
doorstep-step-until = { $course }: debía hacerse a más tardar el { $until }.
doorstep-cover-run-out =
    { $weeks ->
        [one] { $part }: protección temporal del { $when }, buena por 1 semana.
       *[other] { $part }: protección temporal del { $when }, buena por { $weeks } semanas.
    }
doorstep-unanswered =
    { $days ->
        [one] Carta del { $on }: 1 día sin respuesta. Pregunte.
       *[other] Carta del { $on }: { $days } días sin respuesta. Pregunte.
    }
doorstep-long-ago =
    { $years ->
        [one] Última revisión: el { $on }. Toca una cada año.
       *[other] Última revisión: el { $on }. Toca una cada { $years } años.
    }

# --- corrections
doorstep-corrected = { $part }: nuestro registro se corrigió el { $on }, después de la carta del { $letter }. { $why }
doorstep-letter-out-of-date = La carta del { $letter } ya no vale desde el { $since }.

# --- callbacks
doorstep-callback = { $part }: nuestro trabajo del { $when } volvió a fallar el { $seen }. Respondemos nosotros. { $what }.
doorstep-may-be-callback =
    { $years ->
        [one] { $part }: trabajo nuestro del { $when }. Si falla en menos de 1 año, respondemos nosotros. { $what }.
       *[other] { $part }: trabajo nuestro del { $when }. Si falla en menos de { $years } años, respondemos nosotros. { $what }.
    }

# --- what to look at again
doorstep-then = { $rung } el { $on }.
doorstep-then-defects = { $rung } el { $on }: { $defects }.
doorstep-then-patched = En buen estado, al parecer, el { $on }, pero la causa no se curó: { $defects }.
doorstep-since = Desde entonces: { $works }
doorstep-look-never = Sin ver hasta hoy: { $why }.
doorstep-look-not-again = Sin ver el { $on }: { $why }.
doorstep-look-covered = Le quedó otra cosa encima.
