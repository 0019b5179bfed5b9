package ladderbook.computer

import com.google.gson.JsonObject
import com.google.gson.JsonParser
import java.io.File
import kotlin.test.assertTrue

/** The main story's second visit, as its file has it. */
val VISIT: JsonObject = JsonParser.parseReader(File("../fixtures/demo/01-lamplighter-lane/02-2026-09-14.json").reader()).asJsonObject

/** A visit made by taps, from a visit file of the demo: what a person reads, taps and types, and nothing else. */
class Visit(private val hand: Hand) {
    private val say = hand.say

    /** Goes over every structure, stop by stop from the ground up, then adds by the form what no stop expects. */
    fun walk(structures: List<JsonObject>) {
        for (structure in structures) {
            hand.tapFirst(structure.text("name") ?: say("structure-${structure.text("kind")}"))
            val left = structure.all("parts").associateByTo(LinkedHashMap()) { nameOf(it, structure) }
            for (stop in stops()) {
                hand.tapFirst(stop)
                for (name in left.keys.filter { isHere(it) }) part(name, checkNotNull(left.remove(name)), structure)
            }
            for ((name, part) in left) add(name, part, structure)
        }
    }

    private fun stops(): List<String> {
        val all = say.all("stop-")
        return hand.reads().filter { it in all }.distinct().asReversed()
    }

    private fun isHere(name: String) = hand.canTapBeside(name, say("walk-mark"))

    private fun nameOf(part: JsonObject, structure: JsonObject): String {
        val kind = say("kind-${part.text("kind")}")
        val which = part.text("which")
        val side = sideOf(part, structure)?.let { say("side-${it.text("side")}") }
        val twin = structure.all("parts").any { it !== part && it.text("kind") == part.text("kind") && it.text("which") == which }
        return when {
            which != null && twin && side != null -> say("part-which-side", "kind" to kind, "which" to which, "side" to side)
            which != null -> say("part-which", "kind" to kind, "which" to which)
            side != null -> say("part-side", "kind" to kind, "side" to side)
            else -> kind
        }
    }

    private fun sideOf(part: JsonObject, structure: JsonObject) = structure.all("slopes").find { it.text("letter") == part.text("slope") }

    private fun part(name: String, part: JsonObject, structure: JsonObject) {
        if (isPlain(part)) hand.tapBeside(name, say("rung-sound"))
        hand.tapBeside(name, say("walk-mark"))
        mark(part, structure)
        backOnWalk()
    }

    /** Sound and no more: one tap. */
    private fun isPlain(part: JsonObject) =
        part.text("rung") == "sound" && part.text("words") == null && listOf("defects", "answers", "work").all { part.all(it).isEmpty() }

    private fun backOnWalk() {
        if (hand.hasHeading(say("mark-title"))) hand.tapFirst(say("back-walk"))
    }

    private fun add(name: String, part: JsonObject, structure: JsonObject) {
        hand.tap(say("walk-add-part"))
        hand.choose(say("add-part-kind"), say("kind-${part.text("kind")}"))
        sideOf(part, structure)?.let {
            val slope = say("slope-name", "letter" to checkNotNull(it.text("letter")), "side" to say("side-${it.text("side")}"))
            hand.choose(say("add-part-slope"), slope)
        }
        hand.type(say("add-part-which"), part.text("which").orEmpty())
        hand.tap(say("add-part-button"))
        mark(part, structure)
        backOnWalk()
        assertTrue(isHere(name), "$name was added")
    }

    /** All that a visit file says of a part, on its screen. What ends at the walk comes last. */
    private fun mark(part: JsonObject, structure: JsonObject) {
        part.all("defects").forEach { defect(it) }
        part.text("rung")?.let { rung ->
            hand.tapFirst(say("rung-$rung"))
            hand.tapFirst(say("seen-${part.text("seen")}"))
        }
        for (given in part.all("answers")) hand.tapBeside(say("question-${given.text("question")}"), say("answer-${given.text("answer")}"))
        if (part.text("kind") == "layers") layers(structure.all("layers").first { it.text("slope") == part.text("slope") })
        // What the book has from its own record nobody types again.
        part.all("work").filter { it.text("evidence") != "own-record" }.forEach { work(it) }
        part.text("words")?.let { words(it) }
        if (part.text("gone") == "true") unseen(say("condition-gone"))
        part.text("not-seen")?.let { unseen(say("not-seen-$it")) }
    }

    /** By the likely ones, or by what he sees. */
    private fun defect(seen: JsonObject) {
        val name = say("defect-${seen.text("defect")}")
        for (family in say.all("family-")) {
            if (hand.canTap(name)) break
            hand.tapFirst(family)
        }
        hand.tapFirst(name)
        hand.tapBeside(name, say("extent-${seen.text("extent")}"))
    }

    private fun layers(read: JsonObject) {
        val coverings = read.all("layers").map { it.getAsJsonObject("layer") }.filter { it.text("is") == "covering" }
        hand.tap(say("layers-title"))
        hand.choose(say("layers-count"), coverings.size.toString())
        hand.choose(say("layers-covering"), say("covering-${coverings.first().text("of")}"))
        hand.choose(say("layers-learned"), say("learned-${read.text("learned")}"))
        hand.type(say("layers-where"), checkNotNull(read.text("spot")))
        hand.tap(say("layers-keep"))
    }

    private fun work(work: JsonObject) {
        hand.tap(say("work-title"))
        hand.choose(say("work-did"), work.text("remedy")?.let { say("remedy-$it") } ?: say("did-${work.text("did")}"))
        hand.choose(say("work-by"), say("by-${work.text("by")}"))
        hand.type(say("work-when"), checkNotNull(work.text("when")))
        hand.choose(say("work-evidence"), say("evidence-${work.text("evidence")}"))
        hand.tap(say("work-keep"))
    }

    private fun words(words: String) {
        hand.tapFirst(say("say-it"))
        hand.type(say("say-words"), words)
        hand.tap(say("say-keep"))
    }

    private fun unseen(why: String) {
        hand.tap(say("mark-not-seen"))
        hand.tapLast(why)
    }
}

fun JsonObject.text(name: String): String? = get(name)?.takeIf { it.isJsonPrimitive }?.asString

fun JsonObject.all(name: String): List<JsonObject> = getAsJsonArray(name)?.map { it.asJsonObject }.orEmpty()
