// See UIKit beside this folder.

public typealias CFString = String
public typealias CFTypeRef = Any
public typealias CFDictionary = [CFString: Any]
public typealias OSStatus = Int32

public let kSecClass: CFString = "class"
public let kSecClassGenericPassword: CFString = "genp"
public let kSecAttrService: CFString = "svce"
public let kSecAttrAccount: CFString = "acct"
public let kSecAttrAccessible: CFString = "pdmn"
public let kSecAttrAccessibleAfterFirstUnlockThisDeviceOnly: CFString = "cku"
public let kSecReturnData: CFString = "r_Data"
public let kSecValueData: CFString = "v_Data"

public let errSecSuccess: OSStatus = 0
public let errSecItemNotFound: OSStatus = -25300

public func SecItemCopyMatching(_ query: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus { errSecItemNotFound }

public func SecItemAdd(_ attributes: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus { errSecSuccess }

public func SecCopyErrorMessageString(_ status: OSStatus, _ reserved: UnsafeMutableRawPointer?) -> CFString? { nil }
