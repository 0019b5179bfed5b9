package ladderbook.app

import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.content.Context
import android.content.pm.PackageManager
import android.location.Location
import android.location.LocationManager
import androidx.core.content.ContextCompat
import androidx.core.location.LocationManagerCompat
import android.os.CancellationSignal
import ladderbook.core.Fix
import ladderbook.core.Locator
import ladderbook.core.PortTrouble
import java.util.concurrent.CountDownLatch
import java.util.concurrent.TimeUnit

/** How long the sky is asked. */
private const val SECONDS = 15L

/** Where the phone stands, asked once. Nothing follows him. */
class Where(private val context: Context) : Locator {
    private val locations = context.getSystemService(LocationManager::class.java)

    /** Blocks until the sky answers: it is called on the worker. */
    override fun fix(): Fix? {
        if (ContextCompat.checkSelfPermission(context, ACCESS_FINE_LOCATION) != PackageManager.PERMISSION_GRANTED) throw PortTrouble.NotAllowed()
        val provider = listOf(LocationManager.GPS_PROVIDER, LocationManager.NETWORK_PROVIDER).find { locations.isProviderEnabled(it) } ?: return null
        val answered = CountDownLatch(1)
        val giveUp = CancellationSignal()
        var found: Location? = null
        LocationManagerCompat.getCurrentLocation(locations, provider, giveUp, Runnable::run) {
            found = it
            answered.countDown()
        }
        if (!answered.await(SECONDS, TimeUnit.SECONDS)) giveUp.cancel()
        return found?.let { Fix(it.latitude, it.longitude) }
    }
}
