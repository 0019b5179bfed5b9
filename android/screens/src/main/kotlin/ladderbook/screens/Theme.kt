package ladderbook.screens

import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.Immutable
import androidx.compose.runtime.compositionLocalOf
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp

/** Ink and chalk: black on white, one accent; white on black after dusk. Every pair is 7:1 or better. */
@Immutable
class Colours(val ink: Color, val paper: Color, val chalk: Color, val onChalk: Color, val mist: Color, val hatch: Color)

val DAY = Colours(
    ink = Color(0xFF101214), paper = Color.White, chalk = Color(0xFF123F9C), onChalk = Color.White,
    mist = Color(0xFFE9EDF2), hatch = Color(0xFFE0E0E0),
)
val DUSK = Colours(
    ink = Color.White, paper = Color(0xFF0B0C0D), chalk = Color(0xFF9FC0FF), onChalk = Color(0xFF0B0C0D),
    mist = Color(0xFF1D2229), hatch = Color(0xFF25282D),
)

/** How large things are: on the ladder nothing is smaller than what an arm's length and the sun allow. */
@Immutable
class Sizes(val small: TextUnit, val word: TextUnit, val target: Dp)

val AT_THE_TAILGATE = Sizes(small = 18.sp, word = 21.sp, target = 60.dp)
val ON_THE_LADDER = Sizes(small = 24.sp, word = 24.sp, target = 72.dp)

val LINE = 3.dp
val THIN = 2.dp
val CORNER = 10.dp
val EDGE = 16.dp
val GAP = 10.dp

val LocalColours = compositionLocalOf { DAY }
val LocalSizes = compositionLocalOf { AT_THE_TAILGATE }
val LocalFont = compositionLocalOf<FontFamily> { FontFamily.SansSerif }

@Composable
fun Theme(dusk: Boolean, font: FontFamily, content: @Composable () -> Unit) {
    CompositionLocalProvider(LocalColours provides if (dusk) DUSK else DAY, LocalFont provides font, content = content)
}
