import Foundation
import LadderbookCore
import Security

/// The book's key in the keychain of this phone: it goes into no backup and to no other device.
final class KeyInKeychain: KeyStore {
    private var item: [CFString: Any] {
        [kSecClass: kSecClassGenericPassword, kSecAttrService: "ladderbook", kSecAttrAccount: "book"]
    }

    func key() throws -> String? {
        var found: CFTypeRef?
        let status = SecItemCopyMatching(item.merging([kSecReturnData: true]) { $1 } as CFDictionary, &found)
        if status == errSecItemNotFound { return nil }
        try check(status)
        return (found as? Data).map { String(decoding: $0, as: UTF8.self) }
    }

    func keep(key: String) throws {
        let kept: [CFString: Any] = [
            kSecValueData: Data(key.utf8), kSecAttrAccessible: kSecAttrAccessibleAfterFirstUnlockThisDeviceOnly,
        ]
        try check(SecItemAdd(item.merging(kept) { $1 } as CFDictionary, nil))
    }

    private func check(_ status: OSStatus) throws {
        guard status != errSecSuccess else { return }
        let says = SecCopyErrorMessageString(status, nil) as String?
        throw PortTrouble.Failed(reason: says ?? "\(status)")
    }
}
