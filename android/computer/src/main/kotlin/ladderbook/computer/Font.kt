package ladderbook.computer

import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.platform.Font

/** Atkinson Hyperlegible, from the screens' own files. */
val ATKINSON = FontFamily(
    Font("font/atkinson_hyperlegible_regular.ttf", FontWeight.Normal),
    Font("font/atkinson_hyperlegible_bold.ttf", FontWeight.Bold),
)
