package ladderbook.app

import java.time.Clock
import java.time.Duration
import java.time.Instant
import java.time.ZoneOffset

private val DEMO_NOON: Instant = Instant.parse("2026-09-14T12:00:00Z")

/** The program, on the day that the demo plays on. */
class LadderbookOnADesk : LadderbookApp() {
    override val clock: Clock = Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), DEMO_NOON))
}
