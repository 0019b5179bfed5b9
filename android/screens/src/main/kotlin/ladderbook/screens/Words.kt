package ladderbook.screens

import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.text.BasicText
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.style.Hyphens
import androidx.compose.ui.text.style.LineBreak
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.em
import androidx.compose.ui.unit.sp

/** The style of a word: no grey, no thin strokes, lines close together. */
@Composable
fun style(
    size: TextUnit,
    bold: Boolean = false,
    colour: Color = LocalColours.current.ink,
    align: TextAlign = TextAlign.Start,
    line: TextDecoration? = null,
) = TextStyle(
    color = colour, fontSize = grown(size), fontFamily = LocalFont.current,
    fontWeight = if (bold) FontWeight.Bold else FontWeight.Normal,
    lineHeight = 1.2.em, textAlign = align, textDecoration = line,
    hyphens = Hyphens.Auto, lineBreak = LineBreak.Paragraph,
)

/** Large words grow with the reader's wish until they are as large as grown small ones: a title longer than its line helps nobody. */
@Composable
private fun grown(size: TextUnit): TextUnit {
    val scale = LocalDensity.current.fontScale
    return minOf(size.value, maxOf(LARGE_ENOUGH, size.value / scale)).sp
}

private const val LARGE_ENOUGH = 24f

@Composable
fun Say(
    text: String,
    modifier: Modifier = Modifier,
    size: TextUnit = LocalSizes.current.small,
    bold: Boolean = false,
    colour: Color = LocalColours.current.ink,
    align: TextAlign = TextAlign.Start,
    line: TextDecoration? = null,
) = BasicText(text, modifier, style(size, bold, colour, align, line))

/** Words that must fit their place: they shrink before one of them breaks, never under what can be read. */
@Composable
fun Fitting(text: String, size: TextUnit, colour: Color) = BoxWithConstraints(contentAlignment = Alignment.Center) {
    val measurer = rememberTextMeasurer()
    val bold = style(size, bold = true, colour = colour, align = TextAlign.Center)
    // As many letters take more or less room: "Arriba:" and "empezar".
    val wide = text.split(' ').maxOf { measurer.measure(it, bold, softWrap = false).size.width }.toFloat()
    val share = (constraints.maxWidth / wide).coerceAtMost(1f)
    val fitting = if (share < 1f) bold.fontSize.value * share * ALMOST else bold.fontSize.value
    BasicText(text, style = bold.copy(fontSize = maxOf(fitting, LEAST / LocalDensity.current.fontScale).sp))
}

/** A hair less, so that rounding breaks no word. */
private const val ALMOST = 0.98f

/** No word is smaller than this, in points that do not grow. */
private const val LEAST = 13f

@Composable
fun Heading(text: String, modifier: Modifier = Modifier, size: TextUnit = LocalSizes.current.word, colour: Color = LocalColours.current.ink) =
    Say(text, modifier.semantics { heading() }, size, bold = true, colour = colour)
