package ladderbook.app

import android.content.Context
import android.hardware.Sensor
import android.hardware.SensorManager
import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.shadows.SensorEventBuilder
import org.robolectric.shadows.ShadowSensor
import java.util.concurrent.atomic.AtomicBoolean
import kotlin.concurrent.thread
import kotlin.math.atan
import kotlin.math.cos
import kotlin.math.sin

/** The phone laid on a slope, by the rotation that its sensor would tell. */
@RunWith(RobolectricTestRunner::class)
@Config(sdk = [35], application = LadderbookOnADesk::class)
class InclinometerTest {
    private val sensors = RuntimeEnvironment.getApplication().getSystemService(Context.SENSOR_SERVICE) as SensorManager
    private val sensor = ShadowSensor.newInstance(Sensor.TYPE_ROTATION_VECTOR)
    private val level = Inclinometer(RuntimeEnvironment.getApplication())

    @Test
    fun `a phone without the sensor does not know`() = assertEquals(null, level.degrees())

    @Test
    fun `six in twelve, with the long edge up the slope or down it, turned to any side of the sky`() {
        shadowOf(sensors).addSensor(sensor)
        val slope = Math.toDegrees(atan(6.0 / 12.0))
        for (tilt in listOf(slope, -slope)) {
            for (heading in listOf(0.0, 75.0, 190.0)) assertEquals(slope, checkNotNull(lying(tilt, heading)), 0.01)
        }
        assertEquals(0.0, checkNotNull(lying(0.0, 40.0)), 0.01)
    }

    /** What it reads on a phone that is tilted about its short edge and then turned about the upright, in degrees. */
    private fun lying(tilt: Double, heading: Double): Double? {
        val (x, w) = Math.toRadians(tilt / 2).let { sin(it) to cos(it) }
        val (z, v) = Math.toRadians(heading / 2).let { sin(it) to cos(it) }
        // The turn, then the tilt, as one quaternion.
        val turned = floatArrayOf((v * x).toFloat(), (z * x).toFloat(), (z * w).toFloat(), (v * w).toFloat())
        val done = AtomicBoolean()
        val telling = thread {
            while (!done.get()) {
                val event = SensorEventBuilder.newBuilder().setSensor(sensor).setValues(turned).build()
                shadowOf(sensors).sendSensorEventToListeners(event)
                Thread.sleep(1)
            }
        }
        return level.degrees().also {
            done.set(true)
            telling.join()
        }
    }
}
