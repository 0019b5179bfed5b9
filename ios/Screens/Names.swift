import LadderbookCore

// What SwiftUI calls by the same names.

typealias CoreButton = LadderbookCore.Button
typealias CoreForm = LadderbookCore.Form
typealias CoreShape = LadderbookCore.Shape
