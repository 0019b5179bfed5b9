import Foundation

/// A day as the core reads it, and as a calendar of the phone holds it.
public enum Day {
    /// The day that stands in a field; today, where none does.
    public static func date(of text: String) -> Date { (try? Date(text, strategy: written)) ?? .now }

    /// A day, written as the core reads it.
    public static func text(of date: Date) -> String { date.formatted(written) }

    private static var written: Date.ISO8601FormatStyle { Date.ISO8601FormatStyle(timeZone: .current).year().month().day() }
}
