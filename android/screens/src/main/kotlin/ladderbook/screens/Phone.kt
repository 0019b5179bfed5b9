package ladderbook.screens

import androidx.compose.ui.graphics.ImageBitmap
import ladderbook.core.Moment

/** What the phone does around the screens, beside the ports that the core asks itself. */
interface Phone {
    /** The phone's clock. */
    fun now(): Moment

    /** A save is felt and heard, in the language of the tag. */
    fun feel(notice: String, tag: String)

    /** Takes a picture, by a shutter of that name; calls back once the camera's file is there for the core to fetch, or it was refused. */
    fun takePicture(shutter: String, taken: () -> Unit)

    /** Asks, if need be, whether the position may be used; calls back either way. */
    fun allowPosition(answered: () -> Unit)

    /** Listens, and gives the words heard; nothing where it was refused or not understood. */
    fun listen(tag: String, heard: (String?) -> Unit)

    /** Lets a day be picked, written as the core reads it; a phone without a calendar lets it be typed. */
    fun pickDay(now: String, picked: (String) -> Unit)

    /** A picture out of a file. */
    fun decode(file: String): ImageBitmap?

    /** Shows a file in the program that reads it. */
    fun open(file: String)
}
