package ladderbook.app

import android.content.Context
import android.hardware.Sensor
import android.hardware.SensorEvent
import android.hardware.SensorEventListener
import android.hardware.SensorManager
import android.os.Handler
import android.os.HandlerThread
import ladderbook.core.Level
import java.util.concurrent.CountDownLatch
import java.util.concurrent.TimeUnit
import kotlin.math.abs
import kotlin.math.asin

/** Readings in one average, and how long they may take. */
private const val READINGS = 40
private const val SECONDS = 3L

/** Where the long edge of the phone points up, in the rotation matrix that Android makes: the height of the phone's y. */
private const val UP_OF_LONG_EDGE = 7

/** How steep the phone lies on a slope: the rotation vector, averaged while the phone is held there. */
class Inclinometer(context: Context) : Level {
    private val sensors = context.getSystemService(SensorManager::class.java)

    /** Blocks for about a second: it is called on the worker. */
    override fun degrees(): Double? {
        val sensor = sensors.getDefaultSensor(Sensor.TYPE_ROTATION_VECTOR) ?: return null
        val thread = HandlerThread("inclinometer").apply { start() }
        val averaging = Averaging()
        try {
            sensors.registerListener(averaging, sensor, SensorManager.SENSOR_DELAY_GAME, Handler(thread.looper))
            return if (averaging.full.await(SECONDS, TimeUnit.SECONDS)) averaging.degrees() else null
        } finally {
            sensors.unregisterListener(averaging)
            thread.quitSafely()
        }
    }

    private class Averaging : SensorEventListener {
        val full = CountDownLatch(READINGS)
        private val matrix = FloatArray(9)
        private var sum = 0.0
        private var count = 0

        @Synchronized
        override fun onSensorChanged(event: SensorEvent) {
            if (full.count == 0L) return
            SensorManager.getRotationMatrixFromVector(matrix, event.values)
            sum += Math.toDegrees(asin(abs(matrix[UP_OF_LONG_EDGE]).coerceAtMost(1f).toDouble()))
            count += 1
            full.countDown()
        }

        override fun onAccuracyChanged(sensor: Sensor, accuracy: Int) {}

        @Synchronized
        fun degrees() = sum / count
    }
}
