import AVFoundation
import AVKit
import Screens
import Shell
import SwiftUI

/// What the camera sees, with the shutter under the thumb. The phone's own buttons take the picture too: they reach a program whose camera is open.
struct Viewfinder: View {
    let camera: RoofCamera
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(spacing: 0) {
            Sight(eye: camera.eye, pressed: take).ignoresSafeArea(edges: .top)
            ViewfinderKeys(shell: shell, leave: { camera.isOpen = false }, take: take)
        }
        .background(colours.paper.ignoresSafeArea())
        .onAppear { camera.eye.open() }
        .onDisappear { camera.eye.close() }
    }

    private func take() {
        Task { await camera.take() }
    }
}

private struct Sight: UIViewRepresentable {
    let eye: Eye
    let pressed: @MainActor () -> Void

    func makeUIView(context: Context) -> Preview {
        let view = Preview()
        view.preview?.session = eye.session
        view.preview?.videoGravity = .resizeAspectFill
        view.addInteraction(
            AVCaptureEventInteraction { event in
                if event.phase == .began { pressed() }
            })
        return view
    }

    func updateUIView(_ view: Preview, context: Context) {}
}

private final class Preview: UIView {
    override class var layerClass: AnyClass { AVCaptureVideoPreviewLayer.self }

    var preview: AVCaptureVideoPreviewLayer? { layer as? AVCaptureVideoPreviewLayer }

    /// The picture stands upright however the phone is held.
    override func layoutSubviews() {
        super.layoutSubviews()
        let angles: [UIInterfaceOrientation: CGFloat] = [.portrait: 90, .portraitUpsideDown: 270, .landscapeLeft: 180, .landscapeRight: 0]
        guard let held = window?.windowScene?.interfaceOrientation, let angle = angles[held] else { return }
        preview?.connection?.videoRotationAngle = angle
    }
}
