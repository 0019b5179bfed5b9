package ladderbook.app

import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.Manifest.permission.CAMERA
import android.app.Application
import android.content.DialogInterface
import android.content.Intent
import android.location.Location
import android.location.LocationManager
import android.os.Bundle
import android.os.Looper
import android.os.Parcel
import android.os.SystemClock
import android.view.KeyEvent
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.android.controller.ActivityController
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.robolectric.shadows.ShadowAlertDialog
import java.io.File
import java.time.Duration

/** The program on a played phone, with the real core: its activity, its files, its camera key, its share sheet. */
@RunWith(RobolectricTestRunner::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = LadderbookOnADesk::class, qualifiers = "w390dp-h844dp-port-xhdpi")
class ProgramTest {
    private val app get() = RuntimeEnvironment.getApplication() as LadderbookApp
    private lateinit var phone: ActivityController<MainActivity>
    private val hand = Hand { phone.get() }

    @Before
    fun begin() {
        KeyStoreOnADesk.install()
    }

    /** All that was put off is done before the next test: Compose keeps its clock of frames from one to the next. */
    @After
    fun end() {
        phone.close()
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofSeconds(1))
    }

    @Test
    fun `on a new phone a book is begun, and opens again under the key that the phone keeps`() {
        start()
        assertTrue(hand.reads().toString(), hand.hasHeading(Desk.say("arrive-title")))
        assertTrue(File(app.noBackupFilesDir, "book.key").exists())
        assertEquals(1, KeyStoreOnADesk.KEYS.size)
        end()
        start()
        assertTrue(hand.reads().toString(), hand.hasHeading(Desk.say("arrive-title")))
    }

    @Test
    fun `without the key the book stays shut, and says so`() {
        Desk.layDemo(app)
        File(app.noBackupFilesDir, "book.key").delete()
        start()
        assertTrue(hand.reads().toString(), hand.sees(Desk.say("phone-no-key")))
        assertTrue(hand.sees(Desk.say("phone-again")))
    }

    @Test
    fun `from the call to a mark, turned, and brought back after the process was ended`() {
        Desk.layDemo(app)
        start()
        Desk.picture(phone.get(), "arrive")
        toAMark()
        Desk.picture(phone.get(), "mark")
        hand.tap(Desk.say("say-it"))
        hand.type(Desk.say("say-words"), HALF_TYPED)
        turn("+land")
        Desk.picture(phone.get(), "mark-lying")
        assertTrue(hand.sees(HALF_TYPED))
        turn("+port")

        phone.recreate()
        hand.settle()
        assertTrue("a new activity of the same process: ${hand.reads()}", hand.hasHeading(Desk.say("mark-title")))

        val kept = throughAParcel(Bundle().also { phone.pause().stop().saveInstanceState(it).destroy() })
        phone = Robolectric.buildActivity(MainActivity::class.java).setup(kept)
        hand.settle()
        assertTrue("from what the phone kept: ${hand.reads()}", hand.hasHeading(Desk.say("mark-title")))
        hand.tap(Desk.say("say-it"))
        assertTrue(hand.sees(HALF_TYPED))
        phone.get().onBackPressedDispatcher.onBackPressed()
        hand.settle()
        assertTrue("the way back is there too", hand.sees(Desk.say("walk-mark")))
    }

    @Test
    fun `the volume key opens the viewfinder, then takes the picture`() {
        Desk.layDemo(app)
        shadowOf(app as Application).grantPermissions(CAMERA)
        EyeOnADesk.before = File("../docs/pictures/walk.png")
        EyeOnADesk.wrong = null
        start()
        assertFalse("a key of its own where nothing is shot", press())
        toAMark()
        assertTrue(press())
        hand.settle()
        assertTrue(hand.reads().toString(), hand.sees(Desk.say("phone-leave")))
        Desk.picture(phone.get(), "viewfinder")
        assertTrue(press())
        hand.settle()
        assertTrue(hand.reads().toString(), hand.sees(Desk.say("saved-picture")))
        assertFalse(hand.sees(Desk.say("phone-leave")))

        EyeOnADesk.wrong = "the lens is stuck"
        press()
        hand.settle()
        hand.tap(Desk.say("shutter"))
        assertTrue(hand.reads().toString(), hand.sees("the lens is stuck"))
    }

    @Test
    fun `a camera that is refused is told with what to do, and all else works`() {
        Desk.layDemo(app)
        start()
        toAMark()
        hand.tap(Desk.say("shutter"))
        val asked = ShadowAlertDialog.getLatestAlertDialog()
        assertEquals(Desk.say("phone-why-camera"), shadowOf(asked).message)
        asked.getButton(DialogInterface.BUTTON_NEGATIVE).performClick()
        hand.settle()
        assertTrue(hand.reads().toString(), hand.sees("Allow it in the phone's settings"))
        hand.tap(Desk.say("rung-failing"))
        assertTrue(hand.reads().toString(), hand.sees(Desk.say("saved")))
    }

    @Test
    fun `the letter is written, and shown by a program that may read that file alone`() {
        Desk.layDemo(app)
        start()
        toAMark()
        hand.tap(Desk.say("back-walk"))
        hand.tap(Desk.say("walk-close"))
        hand.tap(Desk.say("close-not-reached"))
        hand.tap(Desk.say("verdict-title"))
        hand.tap(Desk.say("verdict-letter"))
        hand.tap(Desk.say("letter-write-english"))
        hand.waitFor(Desk.say("letter-open"))
        hand.tap(Desk.say("letter-open"))
        val shown = shadowOf(app as Application).nextStartedActivity
        assertEquals(Intent.ACTION_VIEW, shown.action)
        assertEquals("application/pdf", shown.type)
        assertEquals("${app.packageName}.files", shown.data?.authority)
        val read = checkNotNull(app.contentResolver.openInputStream(checkNotNull(shown.data))).use { it.readNBytes(5) }
        assertEquals("%PDF-", read.decodeToString())
    }

    @Test
    fun `where the phone stands is asked for once allowed, and fills the field`() {
        Desk.layDemo(app)
        start()
        hand.tap(Desk.say("position-here"))
        assertEquals(Desk.say("phone-why-position"), shadowOf(ShadowAlertDialog.getLatestAlertDialog()).message)
        ShadowAlertDialog.getLatestAlertDialog().getButton(DialogInterface.BUTTON_NEGATIVE).performClick()
        hand.settle()
        assertTrue(hand.reads().toString(), hand.sees("may not use ${Desk.say("phone-port-position")}"))

        shadowOf(app as Application).grantPermissions(ACCESS_FINE_LOCATION)
        standAt(41.26, -96.01)
        hand.tap(Desk.say("position-here"))
        assertTrue(hand.reads().toString(), hand.sees("41.26"))
    }

    private fun standAt(latitude: Double, longitude: Double) {
        val sky = shadowOf(app.getSystemService(LocationManager::class.java))
        sky.setProviderEnabled(LocationManager.GPS_PROVIDER, true)
        sky.simulateLocation(Location(LocationManager.GPS_PROVIDER).also {
            it.latitude = latitude
            it.longitude = longitude
            it.time = System.currentTimeMillis()
            it.elapsedRealtimeNanos = SystemClock.elapsedRealtimeNanos()
        })
    }

    private fun start() {
        phone = Robolectric.buildActivity(MainActivity::class.java).setup()
        hand.settle()
    }

    private fun toAMark() {
        hand.type(Desk.say("arrive-find"), "318 lamplighter")
        hand.tap(Desk.say("arrive-find-button"))
        hand.tap("318 Lamplighter Ln")
        hand.tap(Desk.say("doorstep-open-button"))
        hand.tap(Desk.say("safety-up"))
        hand.tap(Desk.say("walk-mark"))
        assertTrue(hand.reads().toString(), hand.hasHeading(Desk.say("mark-title")))
    }

    private fun turn(how: String) {
        RuntimeEnvironment.setQualifiers(how)
        phone.configurationChange()
        hand.settle()
    }

    private fun press(): Boolean {
        val down = phone.get().dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_DOWN, KeyEvent.KEYCODE_VOLUME_DOWN))
        val up = phone.get().dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_UP, KeyEvent.KEYCODE_VOLUME_DOWN))
        return down && up
    }

    /** As the phone keeps it while the process is gone: as bytes. */
    private fun throughAParcel(kept: Bundle): Bundle {
        val parcel = Parcel.obtain()
        kept.writeToParcel(parcel, 0)
        val bytes = parcel.marshall()
        val other = Parcel.obtain().apply {
            unmarshall(bytes, 0, bytes.size)
            setDataPosition(0)
        }
        return checkNotNull(other.readBundle(MainActivity::class.java.classLoader))
    }

    private companion object {
        const val HALF_TYPED = "The lower course lifts"
    }
}
