// See Core.kt.
package androidx.camera.view

import android.content.Context
import android.widget.FrameLayout
import androidx.camera.core.Preview

class PreviewView(context: Context) : FrameLayout(context) {
    val surfaceProvider = object : Preview.SurfaceProvider {}
}
