// Declarations of our own under the names that `CameraXEye.kt` uses of CameraX, so that it is type-checked: here and in the files beside this one. From
// memory and from public documents: that it compiles against these says nothing about CameraX. Nothing in them does anything.
@file:Suppress("UNUSED_PARAMETER", "unused")

package androidx.camera.core

import java.io.File
import java.util.concurrent.Executor

abstract class UseCase

class CameraSelector {
    companion object {
        @JvmField
        val DEFAULT_BACK_CAMERA = CameraSelector()
    }
}

interface Camera

class ImageCaptureException(reason: Int, message: String, cause: Throwable?) : Exception(message, cause)

class Preview private constructor() : UseCase() {
    interface SurfaceProvider

    var surfaceProvider: SurfaceProvider? = null

    class Builder {
        fun build() = Preview()
    }
}

class ImageCapture private constructor() : UseCase() {
    var targetRotation = 0

    fun takePicture(options: OutputFileOptions, executor: Executor, callback: OnImageSavedCallback) = Unit

    interface OnImageSavedCallback {
        fun onImageSaved(outputFileResults: OutputFileResults)

        fun onError(exception: ImageCaptureException)
    }

    class OutputFileResults

    class OutputFileOptions private constructor() {
        class Builder(file: File) {
            fun build() = OutputFileOptions()
        }
    }

    class Builder {
        fun setCaptureMode(mode: Int) = this

        fun build() = ImageCapture()
    }

    companion object {
        const val CAPTURE_MODE_MINIMIZE_LATENCY = 1
    }
}
