# The second look and the doorstep: read in the sun, at arm's length, so short.
# Names of parts, remedies and courses begin with a capital: let them begin a sentence or follow a colon.

doorstep-sentences = { $first } { $next }

# --- parts and places
doorstep-part = { $kind } { $address }
doorstep-part-which = { $part }, { $which }
doorstep-part-in = { $part } ({ $structure })
doorstep-slope = Slope { $letter }
doorstep-of-structure = { $structure }. { $said }

# --- work, whose it was, and when
doorstep-work-on = { $what }. { $by }, { $when }.
doorstep-work-by = { $what }. { $by }, by { $when } at the latest.
doorstep-work-since = { $where }: { $work }
doorstep-so-told = So we were told.

# --- dangers
doorstep-danger-met = { $on }: { $what }.
doorstep-danger-found = { $part }, { $on }: { $what }.

# --- a verdict in a sentence
doorstep-step = { $when }: { $course }.
doorstep-step-with = { $when }: { $course }. { $remedies }.
doorstep-no-verdict = We gave no advice: too little was seen.
doorstep-found = { $part }: { $rung }.
doorstep-found-advised = { $part }: { $rung }. Advised: { $remedies }.

# --- the request against it
doorstep-asked-done = What we advised on { $on } has been done since.
doorstep-asked-forbidden = { $asked }: code does not allow it here. We said so on { $on }.
doorstep-asked-refused = { $asked }: we said no to that on { $on }. Advised: { $course }.
doorstep-asked-worsens = { $asked }: that makes it worse. Found: { $defect }.
doorstep-asked-referred = { $asked }: not our work. On { $on } we sent them to { $who }.
doorstep-asked-buys-time = { $asked }: that buys { $least } to { $most } months and cures nothing. Found: { $defect }.
doorstep-asked-first-step = { $asked }: that is the first step only. Advised on { $on }: { $course }.
doorstep-asked-step-over = { $asked }: that was to hold until { $until }. Advised: { $course }.
doorstep-asked-smaller = { $asked }: that is less than we advised on { $on }. Advised: { $course }.
doorstep-asked-larger = { $asked }: that is more than we advised on { $on }. Advised: { $course }.
doorstep-asked-agrees = { $asked }: we advised that on { $on }.
doorstep-asked-for = { $asked }: on { $on } we advised: { $remedies }.
doorstep-asked-look-first = { $asked }: on { $on } we could not say before a closer look.

# --- patches
doorstep-patched =
    { $count ->
        [one] { $part }: patched once. Cause: { $cause }.
       *[other] { $part }: patched { $count } times. Cause: { $cause }.
    }
doorstep-lasted = It held { $each }.
doorstep-lasted-one =
    { $months ->
        [one] at most 1 month from { $when }
       *[other] at most { $months } months from { $when }
    }
doorstep-one-more = { $remedy }: that would be patch number { $number }.
doorstep-patch-limit =
    { $limit ->
        [one] Our limit is 1.
       *[other] Our limit is { $limit }.
    }

# --- offers and answers
doorstep-offered = Letter of { $on }. { $said }
doorstep-offered-course = { $course }.
doorstep-offered-for = { $structure }: { $course }.
doorstep-answered = { $came }, { $on }.
doorstep-answered-saying = { $came }, { $on }: “{ $words }”
doorstep-no-answer-yet = No answer so far.

# --- what was not seen
doorstep-never-seen = Never seen: { $parts }. { $why }.
doorstep-not-seen-again = Found bad, not seen since: { $parts }. { $why }.
doorstep-covered = Covered, could not be judged: { $parts }.
doorstep-only-from-ground = { $structure }: only ever seen from the ground.
doorstep-only-from-inside = { $structure }: only ever seen from inside.
doorstep-never-reached = { $structure }: never reached.

# --- what is due
doorstep-due = { $because }: due { $on }.
doorstep-due-later = { $because }: for { $on }.
doorstep-cover-until = The temporary cover was to hold until { $until }.
doorstep-step-until = { $course }: was to be done by { $until }.
doorstep-cover-run-out =
    { $weeks ->
        [one] { $part }: temporary cover of { $when }, good for 1 week.
       *[other] { $part }: temporary cover of { $when }, good for { $weeks } weeks.
    }
doorstep-unanswered =
    { $days ->
        [one] Letter of { $on }: no answer for 1 day. Ask.
       *[other] Letter of { $on }: no answer for { $days } days. Ask.
    }
doorstep-long-ago =
    { $years ->
        [one] Last looked at on { $on }. A look is due each year.
       *[other] Last looked at on { $on }. A look is due every { $years } years.
    }

# --- corrections
doorstep-corrected = { $part }: our record was put right on { $on }, after the letter of { $letter }. { $why }
doorstep-letter-out-of-date = The letter of { $letter } is out of date since { $since }.

# --- callbacks
doorstep-callback = { $part }: our work of { $when } came back on { $seen }. Ours to answer for. { $what }.
doorstep-may-be-callback =
    { $years ->
        [one] { $part }: we did it on { $when }. Bad again within 1 year is ours. { $what }.
       *[other] { $part }: we did it on { $when }. Bad again within { $years } years is ours. { $what }.
    }

# --- what to look at again
doorstep-then = { $rung } on { $on }.
doorstep-then-defects = { $rung } on { $on }: { $defects }.
doorstep-then-patched = Looked sound on { $on }, but the cause was not cured: { $defects }.
doorstep-since = Since then: { $works }
doorstep-look-never = Never seen: { $why }.
doorstep-look-not-again = Not seen on { $on }: { $why }.
doorstep-look-covered = It is covered.
