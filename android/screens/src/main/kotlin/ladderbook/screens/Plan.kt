package ladderbook.screens

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.horizontalScroll
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.rotate
import androidx.compose.ui.graphics.drawscope.scale
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.sp
import ladderbook.core.At
import ladderbook.core.Drawn
import ladderbook.core.Ink
import ladderbook.core.Lettering
import ladderbook.core.Pen
import ladderbook.core.Shape

/** The plan as the page and the letter draw it: as wide as the screen, and for a reader of large words so much wider, to be moved sideways. */
@Composable
fun Plan(plan: Drawn) = BoxWithConstraints(Modifier.fillMaxWidth()) {
    val wide = maxWidth * LocalDensity.current.fontScale.coerceAtLeast(1f)
    Box(Modifier.horizontalScroll(rememberScrollState())) { Drawing(plan, Modifier.width(wide)) }
}

@Composable
private fun Drawing(plan: Drawn, modifier: Modifier) {
    val colours = LocalColours.current
    val font = LocalFont.current
    val measurer = rememberTextMeasurer()
    val drawing = plan.drawing
    Canvas(
        modifier.padding(EDGE, GAP).aspectRatio((drawing.width / drawing.height).toFloat())
            .semantics { contentDescription = plan.says },
    ) {
        scale(size.width / drawing.width.toFloat(), Offset.Zero) {
            for (shape in drawing.shapes) {
                when (shape) {
                    is Shape.Line -> stroke(path(shape.places), shape.pen, colours)
                    is Shape.Rim -> {
                        val rim = path(shape.corners).apply { close() }
                        shape.fill?.let { drawPath(rim, colours.of(it)) }
                        shape.pen?.let { stroke(rim, it, colours) }
                    }
                    is Shape.Words -> words(shape.lettering, measurer, colours, font)
                }
            }
        }
    }
}

private fun Colours.of(ink: Ink): Color = when (ink) {
    Ink.INK -> this.ink
    Ink.PAPER -> paper
    Ink.CHOSEN -> chalk
    Ink.WASH -> mist
}

private fun path(places: List<At>) = Path().apply {
    places.forEachIndexed { at, place ->
        if (at == 0) moveTo(place.x.toFloat(), place.y.toFloat()) else lineTo(place.x.toFloat(), place.y.toFloat())
    }
}

private fun DrawScope.stroke(path: Path, pen: Pen, colours: Colours) {
    val dash = pen.dash.takeIf { it.isNotEmpty() }?.let { lengths -> PathEffect.dashPathEffect(lengths.map { it.toFloat() }.toFloatArray()) }
    drawPath(path, colours.of(pen.ink), style = Stroke(pen.wide.toFloat(), cap = StrokeCap.Round, pathEffect = dash))
}

/** Words keep the size that the drawing gives them: they are measured in its own units, not in the reader's. */
private fun DrawScope.words(lettering: Lettering, measurer: TextMeasurer, colours: Colours, font: FontFamily) {
    val size = (lettering.size / (density * fontScale)).sp
    val weight = if (lettering.bold) FontWeight.Bold else FontWeight.Normal
    val set = measurer.measure(lettering.text, TextStyle(colours.of(lettering.ink), size, weight, fontFamily = font), softWrap = false)
    val middle = Offset(lettering.middle.x.toFloat(), lettering.middle.y.toFloat())
    rotate(lettering.turned.toFloat(), middle) {
        drawText(set, topLeft = middle - Offset(set.size.width / 2f, set.size.height / 2f))
    }
}
