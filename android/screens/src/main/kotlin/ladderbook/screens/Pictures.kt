package ladderbook.screens

import androidx.compose.foundation.Image
import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.layout.ContentScale
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Picture

/** Pictures side by side; a tap shows one as it was taken. */
@Composable
fun Pictures(shell: Shell, pictures: List<Picture>) = Grid(pictures, 2) { picture, modifier -> Thumbnail(shell, picture, modifier) }

/** A picture with what it shows under it, for where two stand side by side. */
@Composable
fun NamedPictures(shell: Shell, pictures: List<Picture>) = Grid(pictures, 2) { picture, modifier ->
    Column(modifier, Arrangement.spacedBy(4.dp)) {
        Thumbnail(shell, picture, Modifier.fillMaxWidth())
        Say(picture.alt, Modifier.clearAndSetSemantics {}, 16.sp)
    }
}

@Composable
private fun Thumbnail(shell: Shell, picture: Picture, modifier: Modifier) {
    val shape = RoundedCornerShape(CORNER)
    val bitmap by produceState<ImageBitmap?>(null, picture.photo) { value = shell.thumbnail(picture.photo) }
    Box(
        modifier.aspectRatio(4f / 3f).clip(shape).border(LINE, LocalColours.current.ink, shape)
            .clickable(role = Role.Button) { shell.openPicture(picture.photo) }
            .semantics { contentDescription = picture.alt },
    ) { bitmap?.let { Image(it, null, Modifier.fillMaxWidth(), contentScale = ContentScale.Crop) } }
}
