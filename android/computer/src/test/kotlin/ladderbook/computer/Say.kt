package ladderbook.computer

import java.io.File

/** The words that a person reads, from the message files themselves: messages of one line without choices. */
class Say(language: String) {
    private val messages = File("../core/trade/words/$language").walk().filter { it.extension == "ftl" }
        .flatMap { MESSAGE.findAll(it.readText()) }.associate { it.groupValues[1] to it.groupValues[2] }

    operator fun invoke(key: String, vararg given: Pair<String, String>): String {
        val text = checkNotNull(messages[key]) { "no message $key" }
        return ARGUMENT.replace(text) { asked -> checkNotNull(given.toMap()[asked.groupValues[1]]) { "$key asks for ${asked.value}" } }
    }

    /** All messages whose key begins so. */
    fun all(beginning: String): List<String> = messages.filterKeys { it.startsWith(beginning) }.values.toList()

    private companion object {
        val MESSAGE = Regex("^([a-z][\\w-]*) = (.+)$", RegexOption.MULTILINE)
        val ARGUMENT = Regex("\\{ \\$([\\w-]+) }")
    }
}
