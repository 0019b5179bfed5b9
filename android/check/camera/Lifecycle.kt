// See Core.kt.
@file:Suppress("UNUSED_PARAMETER", "RedundantSuspendModifier", "UnusedReceiverParameter")

package androidx.camera.lifecycle

import android.content.Context
import androidx.camera.core.Camera
import androidx.camera.core.CameraSelector
import androidx.camera.core.UseCase
import androidx.lifecycle.LifecycleOwner

class ProcessCameraProvider private constructor() {
    fun unbindAll() = Unit

    fun bindToLifecycle(owner: LifecycleOwner, selector: CameraSelector, vararg useCases: UseCase): Camera = object : Camera {}

    companion object {
        internal val only = ProcessCameraProvider()
    }
}

suspend fun ProcessCameraProvider.Companion.awaitInstance(context: Context): ProcessCameraProvider = only
