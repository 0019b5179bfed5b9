# The letter to the owner. Written to be read once, at a kitchen table, by somebody who never stood on a roof.

letter-your-roof = Your roof at { $address }
letter-licence = Licence { $licence }
letter-looked = { $by } came on { $date }. What was to be looked at: { $scope }.
letter-takes-the-place = This letter takes the place of our letter of { $date }: a record was corrected since. Please go by this one.
letter-footer = { $address } · { $date }
letter-then = then
letter-now = now
letter-no-picture = This picture could not be shown. The firm has the original.
letter-unprintable = The sign � stands for a character that this printed letter has no letter for; the letter as a web page shows it.
letter-short-end = Pictures and reasons are in the letter.

# --- naming
letter-structure-unknown = another structure
letter-slope = Slope { $letter }, { $side }
letter-slope-pitch = { $slope }, { $pitch }
letter-no-slope = On no one slope
letter-part = { $kind } ({ $address })
letter-part-in-structure = { $kind } ({ $structure }, { $address })
letter-part-which = { $kind }, { $which }
letter-on-structure = { $what } ({ $structure })
letter-of-structure = { $structure }: { $says }
letter-list = { $each }
letter-reason = { $why }:
letter-because = Not seen: { $why }.
letter-and-more = { $list } and { $more } more
letter-yes = Yes.
letter-no = No.
letter-unknown = Not known.
letter-months = { $least } to { $most } months
letter-months-exact = { $most ->
    [one] one month
   *[other] { $most } months
}
letter-years = { $least } to { $most } years
letter-years-exact = { $most ->
    [one] one year
   *[other] { $most } years
}

# --- page one: what an owner asks
letter-ask-leaking = Is it leaking now, and where from?
letter-ask-wrong = What is wrong?
letter-ask-advice = What do you advise?
letter-ask-waiting = What can wait? What if I wait?
letter-ask-patch = Can it be patched? How long does that hold, and what does it cost?
letter-ask-lasting = How long will it last?
letter-ask-wood = Is the wood bad?
letter-ask-permit = Do I need a permit?
letter-ask-warranty = Is it under warranty, or insured?
letter-ask-not-seen = What did you not see?

letter-leak-seen = Water is coming in: we saw it.
letter-leak-told = You told us that water comes in. We did not see it come in ourselves.
letter-leak-none = Where we could look, no water was coming in.
letter-leak-told-no = You told us that none comes in. We could not see the inside ourselves.
letter-leak-unknown = We could not see the inside, and nobody told us.
letter-leak-way = The way in that we found: { $parts }.
letter-leak-likely = The likely way in: { $parts }.
letter-leak-way-not-found = We did not find the way in. That is not to say that there is none.
letter-leak-next-rain = Water can get in at the next hard rain: { $parts }.
letter-told-room = You told us where it shows: { $room }.
letter-told-when = You told us when it shows: { $when }.
letter-told-room-when = You told us where and when it shows: { $room }; { $when }.

letter-wrong-part = { $part }, { $rung }:
letter-wrong-more = { $more ->
    [one] One more finding follows, part by part.
   *[other] { $more } more findings follow, part by part.
}
letter-wrong-nothing = Nothing that we saw is worn or failing.

letter-advice-none = Nothing yet: we saw too little to advise on.
letter-step-with-work = { $course }: { $work }.
letter-step-briefly = { $course }: { $work }
letter-step-alone = { $course }. { $what }
letter-work = { $remedy } ({ $places })
letter-work-lead = { $work }.
letter-common-practice = common practice
letter-work-for = { $work }, work for { $who }
letter-step-until = { $step } To be done by { $date }.
letter-step-holds-until = { $step } It holds for weeks: the lasting work must follow by { $date }.
letter-step-look-by = { $step } Next look by { $date }.

letter-can-wait = Can wait:
letter-can-wait-rest = whatever is not named above can wait until the next look.
letter-if-you-wait = If you wait:
letter-wait-now = what is marked “now” gets dearer with every rain. Water that gets in wets the wood and what is under it, and wet wood rots.
letter-wait-season = nothing we saw must be done before the next rain, but do not let it go through another winter or storm season.
letter-wait-later = nothing we saw gets worse quickly. Have it looked at again when this letter says.

letter-patch-holds = on { $parts }: holds some { $months }. The cause stays.
letter-patch-nothing = We found nothing that a patch would help.
letter-patch-refused = We do not sell: { $list }. Why is told further on.
letter-price-later = What it costs: this letter names no price. It comes with our offer.

letter-lasts-course-leave = It does its work today, where we could see it.
letter-lasts-course-maintain = It does its work; with the upkeep named here it should go on doing so.
letter-lasts-course-make-safe = What we make safe holds for weeks. It is no repair.
letter-lasts-course-repair = The places we repair should last as long as the roof around them. That roof has years left, as far as we could see.
letter-lasts-course-recover = A new covering laid over an old one often lasts less long than one laid on bare wood.
letter-lasts-course-tear-off = The old covering is at its end. A new one on sound wood is a fresh start.
letter-lasts-course-refer = That depends on the other trade's work.
letter-lasts-course-look-first = We cannot say before we have looked.
letter-lasts-no-number = Nobody can promise a number of years. Asphalt shingles last some 20 years on the average (NAHB study of 2007); sun, wind, air from below and workmanship make it less or more.

letter-wood-bad = Wet or soft wood: { $parts }.
letter-wood-good = Where we could look, it was dry and firm: { $parts }.
letter-wood-unknown = We could not look at it.
letter-wood-bare = All of it is seen only when it lies bare.

letter-permit-covering = A new covering usually needs one; ask your building office before work begins (common practice).
letter-permit-repair = A small repair often needs none, but towns differ: ask your building office before work begins (common practice).
letter-permit-none = For what we advise, usually not. Your building office knows (common practice).
letter-warranty = We record what we see and picture it. What a warranty or a policy covers is between you and whoever wrote it; the claim is yours to make.

letter-not-close = Only from afar, or on somebody's word:
letter-unmarked = Not looked at this time:
letter-all-seen = We saw every part on our list from near.

# --- after page one
letter-cautions = Please be careful
letter-changes = What changed since we were last here
letter-findings = What we found, part by part
letter-why = What we advise, and why
letter-refused = What we do not sell, and why
letter-next-look = The look that could change this
letter-limits = How far this letter reaches
letter-decision = Your decision

letter-changes-since = We last looked on { $date }. This is what became of what we found then.
letter-then-found = Found then: { $defects }.
letter-then-found-on = Found on { $date }: { $defects }.
letter-then-on = Last seen on { $date }.
letter-work-since = Work done on it since: { $by }.
letter-patches = { $count ->
    [one] Patched once on this cause: { $each }.
   *[other] Patched { $count } times on this cause: { $each }.
}
letter-patch-one = { $what } ({ $by }, { $date } at the latest)
letter-patch-something = something we could not tell
letter-patch-usual = Such a patch usually holds { $months } (common practice).
letter-callback-us = Our own work has come back. That is for us to put right.
letter-callback-not-us = Work that should have cured it has come back. It was not ours: call whoever did it first.
letter-callback-unknown = Work that should have cured it has come back. We do not know whose it was.
letter-not-seen-because = Why not: { $why }.
letter-quiet = { $count ->
    [one] One other part was sound then and is sound now.
   *[other] { $count } other parts were sound then and are sound now.
}
letter-new = { $count ->
    [one] One part was seen for the first time; it is told below.
   *[other] { $count } parts were seen for the first time; they are told below.
}

letter-roster = The rest, in a line each
letter-defect = { $defect }, { $extent }
letter-what = What it is:
letter-why-it-matters = Why it matters:
letter-water = How water gets in:
letter-advised = We advise:
letter-cures = Cures it:
letter-buys-time = Buys time:
letter-worsens = Makes it worse:
letter-remedy-cures = { $remedy }. That cures it.
letter-remedy-buys-time = { $remedy }. That holds some { $months } ({ $source }); the cause stays.
letter-remedy-worsens = { $remedy }. Be warned that this makes it worse.
letter-measure = { $of }: { $value }, { $got }
letter-measure-within = { $measure }, within { $within } %
letter-corrected = Corrected on { $date }: { $why }
letter-caption-led = { $lead }: { $what }
letter-picture-then = Then, { $date }
letter-picture-now = Now, { $date }
letter-alt = Picture of { $part }: { $what }

letter-when-structure = { $when }, { $structure }:
letter-why-step = { $when } { $course }
letter-source-code-edition = { $document } { $edition }, { $section }
letter-source-code = { $document } { $section }
letter-source-amendment = what { $place } has added to the code
letter-source-evidence = what we saw
letter-source-practice = trade practice
letter-source-policy = our own policy
letter-source-owner = what you told us

letter-forbidden = A rule forbids it.
letter-refused-by-judgement = We would not be doing you a service.

letter-turns-to = { $count ->
    [one] One look could change our advice. It would then be: { $course }.
   *[other] These looks together could change our advice. It would then be: { $course }.
}
letter-look-if = { $ask }. It changes if { $state }.
letter-look-asked = To be asked

letter-open-questions = Nobody has answered these yet:
letter-limits-always = We tell what could be seen on the day, from where we stood. A roof can hide what only shows when it is opened.
letter-code-adopted = Code sections are those of the edition adopted in { $place } ({ $edition }), as far as we know it; your building office has the last word.

letter-no-contract = This letter is advice. It is no contract, and signing it buys nothing: it tells us what you have decided, and an offer and a contract follow before any work begins.
letter-no-contract-offered = This letter is advice and an offer. It is no contract yet: signing it tells us what you want done at the price beside it, and a contract follows before any work begins.
letter-choose = Tick what you want done, or that you decline, and sign.
letter-decline = No:
letter-decline-says = I have read this letter and decline the work.
letter-sign-owner = Owner
letter-sign-firm = For the firm
letter-sign-for = For { $firm }
letter-sign-date = Date
letter-contract = Contract
letter-notices = Legal notices
letter-no-notices = The firm has put no legal notices here yet. Where work is sold at your home, federal rules give most owners three business days to cancel, and a notice of that right, in the language of the sale, belongs with the contract (16 CFR 429). Ask for it before you sign one.

# --- the roof on plan, and what a new covering takes
letter-plan = Your roof, measured
letter-plan-title = Plan of the roof
letter-plan-how = Seen from above. A large letter names a slope, and an arrow shows which way its water runs. A letter with a number at the edge is a part that this letter tells of.
letter-plan-alt = The roof seen from above, with the lengths of its edges and the numbers of the parts told of. Its slopes: { $slopes }. The tables below give areas and lengths.
letter-plan-slope = { $letter } at { $pitch }
letter-plan-left-out = There was no room on the plan for:
letter-plan-extent = In all { $squares } squares are covered: { $area } along the slopes. A square is 100 square feet.
letter-plan-exact = How it was measured: { $got }. Lengths may be up to { $lengths } % more or less, areas up to { $areas } %.
letter-plan-slopes = Slope
letter-plan-pitch = Pitch
letter-plan-area = Area along the slope
letter-plan-lines = Edges and lines
letter-plan-length = Together
letter-slope-alone = Slope { $letter }
letter-part-unknown = a part of the roof
letter-two-sentences = { $first } { $second }
letter-takes = What a new covering takes
letter-takes-covered = Counted for { $covering } on these slopes: { $slopes }. { $order }.
letter-takes-what = What
letter-takes-amount = Needed
letter-takes-order = Ordered
letter-takes-why = { $reason } ({ $source })
letter-takes-gaps = Not counted, and so not in this list: { $items }.
letter-comes-down = What comes down: { $squares }, { $layers } of covering, hauled away in { $loads }: { $pounds }, { $yards }.
letter-layers = { $least } to { $most } layers
letter-layers-exact = { $most ->
    [one] one layer
   *[other] { $most } layers
}
letter-loads = { $least } to { $most } loads
letter-loads-exact = { $most ->
    [one] one load
   *[other] { $most } loads
}

# --- what is offered
letter-offer = What we offer, and what it costs
letter-offer-ran-out = Our offer of { $on } held until { $until }. Its prices no longer hold: ask us for a new one.
letter-against-advice = Against our advice, { $when }
letter-against = What speaks against it:
letter-not-ours-to-price = This is not ours to do, so we name no price for it.
letter-includes = This includes:
letter-leaves = What it does not include or put right:
letter-over-years = Over the years:
letter-includes-material = All that stands in the list “{ $heading }”.
letter-includes-need = { $item }: { $order }
letter-patching = { $remedy }, { $part }: { $says }
letter-put-right-only-by = Only one course puts this right: { $parts }. It is this one: “{ $course }”.
letter-put-right-by-none = Nothing that is offered here puts this right: { $parts }.
letter-price = { $price }.
letter-price-against = { $price }, against our advice.
letter-price-until = { $price }, until { $date }.
letter-price-none-yet = No price yet: our offer says why.
letter-price-each-time = { $price } each time.
letter-price-offered = What we offer:
letter-price-of-advice = What our advice costs stands above; what it includes stands further on.
letter-course-for = { $course } for { $price }
letter-course-against = { $course } for { $price }, against our advice
letter-short-offer = Offered until { $date }:
