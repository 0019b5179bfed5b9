//! Sealing: XChaCha20-Poly1305 with a random nonce put before the sealed bytes, and secrets that are wiped when they are let go.

use crate::error::{BookError, Result};
use chacha20poly1305::aead::{Aead, Payload};
use chacha20poly1305::{KeyInit, XChaCha20Poly1305, XNonce};
use sha2::{Digest, Sha256};
use std::fmt;
use trade::words::Said;
use zeroize::Zeroizing;

const NONCE: usize = 24;

/// Thirty-two secret bytes, wiped from memory when let go and never printed.
#[derive(Clone)]
pub(crate) struct Secret(Zeroizing<[u8; 32]>);

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret")
    }
}

impl Secret {
    /// From bytes.
    pub(crate) fn new(bytes: [u8; 32]) -> Self {
        Self(Zeroizing::new(bytes))
    }

    /// From bytes that must be thirty-two.
    pub(crate) fn from_slice(bytes: &[u8]) -> Option<Self> {
        bytes.try_into().ok().map(Self::new)
    }

    /// Fresh from the system's random source.
    pub(crate) fn generate() -> Result<Self> {
        let mut bytes = Zeroizing::new([0; 32]);
        fill_random(bytes.as_mut_slice())?;
        Ok(Self(bytes))
    }

    /// The bytes.
    pub(crate) fn bytes(&self) -> &[u8; 32] {
        &self.0
    }

    /// Another secret for one purpose, from which this one cannot be told.
    pub(crate) fn derived(&self, purpose: &str) -> Self {
        Self(Zeroizing::new(self.digest(purpose.as_bytes())))
    }

    /// SHA-256 over this secret and what follows it. `of` is of one length for each secret, so that nothing can be appended.
    pub(crate) fn digest(&self, of: &[u8]) -> [u8; 32] {
        let mut hash = Sha256::new();
        hash.update(self.bytes());
        hash.update(of);
        hash.finalize().into()
    }
}

/// Fills a buffer from the system's random source.
pub(crate) fn fill_random(buffer: &mut [u8]) -> Result<()> {
    getrandom::fill(buffer).map_err(|error| {
        BookError::NoKey(Said::new("key-no-random").with("detail", error.to_string()))
    })
}

/// Seals bytes; `about` is bound to them and must be the same when they are unsealed.
pub(crate) fn seal(secret: &Secret, plain: &[u8], about: &[u8]) -> Result<Vec<u8>> {
    let mut nonce = [0; NONCE];
    fill_random(&mut nonce)?;
    let cipher = XChaCha20Poly1305::new(secret.bytes().into());
    let payload = Payload {
        msg: plain,
        aad: about,
    };
    let sealed =
        cipher
            .encrypt(&XNonce::from(nonce), payload)
            .map_err(|_| BookError::TooLarge {
                megabytes: plain.len() as u64 / 1_000_000,
                most: 256_000,
            })?;
    let mut out = Vec::with_capacity(NONCE + sealed.len());
    out.extend_from_slice(&nonce);
    out.extend_from_slice(&sealed);
    Ok(out)
}

/// Unseals bytes; `None` where the secret is another or the bytes were changed.
pub(crate) fn unseal(secret: &Secret, sealed: &[u8], about: &[u8]) -> Option<Vec<u8>> {
    let (nonce, rest) = sealed.split_first_chunk::<NONCE>()?;
    let payload = Payload {
        msg: rest,
        aad: about,
    };
    XChaCha20Poly1305::new(secret.bytes().into())
        .decrypt(&XNonce::from(*nonce), payload)
        .ok()
}

/// Bytes as lower-case hexadecimal.
pub(crate) fn hex(bytes: &[u8]) -> String {
    use fmt::Write;
    bytes
        .iter()
        .fold(String::with_capacity(bytes.len() * 2), |mut out, byte| {
            // Writing to a String cannot fail.
            let _ = write!(out, "{byte:02x}");
            out
        })
}

/// Hexadecimal as bytes; `None` where it is none or of another length.
pub(crate) fn unhex<const N: usize>(text: &str) -> Option<[u8; N]> {
    if text.len() != 2 * N || !text.bytes().all(|byte| byte.is_ascii_hexdigit()) {
        return None;
    }
    let mut out = [0; N];
    for (at, byte) in out.iter_mut().enumerate() {
        *byte = u8::from_str_radix(text.get(2 * at..2 * at + 2)?, 16).ok()?;
    }
    Some(out)
}

/// SHA-256 of bytes, lower-case hexadecimal.
pub(crate) fn sha256(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_sealed_comes_back_and_any_change_is_seen() {
        let secret = Secret::generate().unwrap();
        let sealed = seal(&secret, b"ridge cap loose", b"line 1").unwrap();
        assert_eq!(
            unseal(&secret, &sealed, b"line 1").as_deref(),
            Some(&b"ridge cap loose"[..])
        );
        assert!(unseal(&secret, &sealed, b"line 2").is_none());
        assert!(unseal(&Secret::generate().unwrap(), &sealed, b"line 1").is_none());
        for at in 0..sealed.len() {
            let mut changed = sealed.clone();
            changed[at] ^= 1;
            assert!(unseal(&secret, &changed, b"line 1").is_none(), "byte {at}");
        }
        assert!(unseal(&secret, &sealed[..10], b"line 1").is_none());
    }

    #[test]
    fn the_same_words_never_look_the_same() {
        let secret = Secret::generate().unwrap();
        assert_ne!(
            seal(&secret, b"a", b"").unwrap(),
            seal(&secret, b"a", b"").unwrap()
        );
    }

    #[test]
    fn a_secret_does_not_print_itself() {
        assert_eq!(format!("{:?}", Secret::new([7; 32])), "Secret");
    }

    #[test]
    fn hexadecimal() {
        assert_eq!(hex(&[0, 255, 16]), "00ff10");
        assert_eq!(unhex::<3>("00ff10"), Some([0, 255, 16]));
        assert_eq!(unhex::<3>("00ff1"), None);
        assert_eq!(unhex::<3>("00fg10"), None);
        assert_eq!(unhex::<3>("+0ff10"), None);
    }

    #[test]
    fn the_hash_is_that_of_the_standard() {
        // FIPS 180-4, example "abc".
        assert_eq!(
            sha256(b"abc"),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
    }
}
