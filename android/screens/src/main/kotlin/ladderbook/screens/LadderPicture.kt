package ladderbook.screens

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.unit.Dp
import ladderbook.core.Ladder

/** Width to height of the ladder. */
private const val SLIM = 0.62f

/** How far it grows with the words beside it. */
private const val GROWS = 1.5f

private enum class Bar { WHOLE, SAGGING, SNAPPED, GONE }

private fun rungs(ladder: Ladder): List<Bar> = when (ladder) {
    Ladder.SOUND -> listOf(Bar.WHOLE, Bar.WHOLE, Bar.WHOLE)
    Ladder.AGEING -> listOf(Bar.WHOLE, Bar.SAGGING, Bar.WHOLE)
    Ladder.FAILING -> listOf(Bar.WHOLE, Bar.SNAPPED, Bar.WHOLE)
    Ladder.FAILED -> listOf(Bar.SNAPPED, Bar.SNAPPED, Bar.GONE)
    Ladder.NOT_SEEN, Ladder.GONE -> listOf(Bar.GONE, Bar.GONE, Bar.GONE)
}

/** A condition as a small ladder. The word always stands beside it, so it is hidden from readers. */
@Composable
fun LadderPicture(ladder: Ladder, height: Dp, colour: Color = LocalColours.current.ink) {
    val tall = height * LocalDensity.current.fontScale.coerceIn(1f, GROWS)
    Canvas(Modifier.size(tall * SLIM, tall).clearAndSetSemantics {}) {
        val left = size.height * 0.1f
        val right = size.width - left
        val thick = size.height * 0.09f
        val dots = PathEffect.dashPathEffect(floatArrayOf(1f, size.height * 0.17f)).takeIf { ladder == Ladder.NOT_SEEN }
        for (x in listOf(left, right)) {
            drawLine(colour, Offset(x, thick), Offset(x, size.height - thick), thick, StrokeCap.Round, dots)
        }
        for ((bar, at) in rungs(ladder).zip(listOf(0.2f, 0.5f, 0.8f))) {
            bar(bar, at * size.height, left, right, colour, thick)
        }
    }
}

private fun DrawScope.bar(bar: Bar, y: Float, left: Float, right: Float, colour: Color, thick: Float) {
    fun line(from: Offset, to: Offset) = drawLine(colour, from, to, thick, StrokeCap.Round)
    when (bar) {
        Bar.WHOLE -> line(Offset(left, y), Offset(right, y))
        Bar.SAGGING -> {
            val sag = Path().apply {
                moveTo(left, y)
                quadraticTo(size.width / 2, y + size.height * 0.17f, right, y)
            }
            drawPath(sag, colour, style = Stroke(thick, cap = StrokeCap.Round))
        }
        Bar.SNAPPED -> {
            line(Offset(left, y), Offset(size.width * 0.36f, y + size.height * 0.07f))
            line(Offset(right, y), Offset(size.width * 0.7f, y + size.height * 0.1f))
        }
        Bar.GONE -> {}
    }
}
