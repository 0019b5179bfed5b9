// swift-tools-version: 6.0
import PackageDescription

// Generated/ is filled from ../bindings: by linux/test for the tests, by ./xcframework for an iPhone.
#if os(Linux)
let ffi = Target.systemLibrary(name: "LadderbookCoreFFI", path: "Generated/LadderbookCoreFFI")
let swiftUI: [Target.Dependency] = ["SwiftUI"]
// What the program uses of Apple's, each with what it uses itself.
let apple: [(name: String, uses: [Target.Dependency])] = [
    ("UIKit", []), ("AVFoundation", ["UIKit"]), ("AVKit", ["UIKit"]), ("Speech", ["AVFoundation"]), ("CoreLocation", []), ("CoreMotion", []),
    ("Security", []), ("ImageIO", ["UIKit"]), ("QuickLook", ["UIKit"]), ("UniformTypeIdentifiers", []),
]
let checked: [Target] =
    apple.map { .target(name: $0.name, dependencies: $0.uses, path: "linux/Apple/\($0.name)") } + [
        // Walked over again and again: worth its optimising.
        .target(name: "SwiftUI", dependencies: ["UIKit"], path: "linux/SwiftUI", swiftSettings: [.unsafeFlags(["-O"])]),
        .executableTarget(
            name: "App", dependencies: ["Screens", "SwiftUI"] + apple.map { .byName(name: $0.name) }, path: "App",
            exclude: ["Assets.xcassets", "PrivacyInfo.xcprivacy", "en.lproj", "es.lproj"]),
        .target(name: "Hand", dependencies: ["Screens", "SwiftUI"], path: "linux/Hand"),
        .executableTarget(name: "OnAMark", dependencies: ["Hand"], path: "linux/OnAMark"),
        .testTarget(name: "Tests", dependencies: ["Hand"], path: "Tests"),
    ]
#else
let ffi = Target.binaryTarget(name: "LadderbookCoreFFI", path: "Generated/LadderbookCoreFFI.xcframework")
let swiftUI: [Target.Dependency] = []
let checked: [Target] = []
#endif

let package = Package(
    name: "Ladderbook",
    platforms: [.iOS("17.2")],
    products: [.library(name: "Screens", targets: ["Screens"])],
    targets: [
        ffi,
        .target(
            name: "LadderbookCore", dependencies: ["LadderbookCoreFFI"], path: "Generated/LadderbookCore",
            linkerSettings: [.linkedLibrary("ladderbook_core", .when(platforms: [.linux]))]),
        .target(name: "Shell", dependencies: ["LadderbookCore"], path: "Shell"),
        .target(name: "Screens", dependencies: ["Shell"] + swiftUI, path: "Screens"),
    ] + checked,
    swiftLanguageModes: [.v6]
)
