package ladderbook.app

import android.app.Activity
import android.graphics.Bitmap
import android.graphics.Canvas
import android.os.Looper
import android.os.SystemClock
import android.view.MotionEvent
import android.view.View
import android.view.ViewGroup
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.node.RootForTest
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.text.AnnotatedString
import kotlinx.coroutines.runBlocking
import kotlinx.coroutines.withContext
import org.robolectric.Shadows.shadowOf
import java.time.Duration

/** A hand on the phone: it reads what a reader of the screen would read, scrolls to it and touches the glass there. */
class Hand(private val activity: () -> Activity) {
    private val speck = Bitmap.createBitmap(1, 1, Bitmap.Config.ARGB_8888)

    /** Touches what says exactly so. */
    fun tap(words: String) = touch(words) { node -> node.says().contains(words) }

    fun type(label: String, text: String) {
        val field = checkNotNull(nodes().find { it.named() == label && it.config.contains(SemanticsActions.SetText) }) { "no field $label; ${reads()}" }
        checkNotNull(field.config[SemanticsActions.SetText].action)(AnnotatedString(text))
        settle()
    }

    fun sees(words: String): Boolean = reads().any { words in it }

    fun hasHeading(words: String): Boolean = nodes().any { SemanticsProperties.Heading in it.config && words in it.says() }

    fun reads(): List<String> = nodes().flatMap { it.says() }

    /** Lets the core answer and the screen be drawn, until nothing more changes. */
    fun settle() {
        var before = emptyList<String>()
        var same = 0
        while (same < SETTLED) {
            frame()
            val now = reads()
            same = if (now == before) same + 1 else 0
            before = now
        }
    }

    /** Waits for what takes the core longer than a tap. */
    fun waitFor(words: String) {
        var waited = 0
        while (!sees(words)) {
            check(waited++ < PATIENCE) { "$words does not come; ${reads()}" }
            Thread.sleep(FRAMES)
            frame()
        }
        settle()
    }

    /** What was asked of the worker is done, and what it answered is drawn: a phone draws by itself, and Compose lays out while it draws. */
    private fun frame() {
        val app = activity().application as LadderbookApp
        runBlocking { withContext(app.worker) {} }
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(FRAMES))
        activity().window.decorView.draw(Canvas(speck))
    }

    private fun touch(words: String, what: (SemanticsNode) -> Boolean) {
        fun found() = nodes().firstOrNull { what(it) && it.config.contains(SemanticsActions.OnClick) }
        var node = checkNotNull(found()) { "nothing to tap says $words; ${reads()}" }
        var tries = 0
        while (!node.isInSight() && tries++ < TRIES) {
            scrollTowards(node)
            settle()
            node = checkNotNull(found())
        }
        check(node.isInSight()) { "$words is out of reach at ${node.boundsInWindow}" }
        press(node.boundsInWindow.center)
    }

    /** Whether all of it can be touched: what scrolled out is cut off. */
    private fun SemanticsNode.isInSight() = boundsInWindow.height >= size.height - 1 && boundsInWindow.width >= size.width - 1

    private fun scrollTowards(node: SemanticsNode) {
        val scroller = checkNotNull(generateSequence(node.parent) { it.parent }.find { it.config.contains(SemanticsActions.ScrollBy) }) {
            "nothing scrolls there"
        }
        val away = node.positionInWindow.y + node.size.height / 2f - scroller.boundsInWindow.center.y
        checkNotNull(scroller.config[SemanticsActions.ScrollBy].action)(0f, away)
    }

    private fun press(at: Offset) {
        val begun = SystemClock.uptimeMillis()
        val window = activity().window.decorView
        for ((what, later) in listOf(MotionEvent.ACTION_DOWN to 0L, MotionEvent.ACTION_UP to FRAMES)) {
            val event = MotionEvent.obtain(begun, begun + later, what, at.x, at.y, 0)
            window.dispatchTouchEvent(event)
            event.recycle()
            shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(FRAMES))
        }
        settle()
    }

    private fun nodes(): List<SemanticsNode> = roots(activity().window.decorView).flatMap { all(it.semanticsOwner.rootSemanticsNode) }

    private fun roots(view: View): List<RootForTest> = listOfNotNull(view as? RootForTest) +
        (view as? ViewGroup)?.let { group -> (0 until group.childCount).flatMap { roots(group.getChildAt(it)) } }.orEmpty()

    private fun all(node: SemanticsNode): List<SemanticsNode> = listOf(node) + node.children.flatMap { all(it) }

    private fun SemanticsNode.says() = config.getOrNull(SemanticsProperties.Text).orEmpty().map { it.text } +
        listOfNotNull(config.getOrNull(SemanticsProperties.EditableText)?.text)

    private fun SemanticsNode.named() = config.getOrNull(SemanticsProperties.ContentDescription)?.firstOrNull()

    private companion object {
        const val SETTLED = 5
        const val FRAMES = 50L
        const val PATIENCE = 6_000
        const val TRIES = 4
    }
}
