package ladderbook.app

import android.content.Context
import android.security.keystore.KeyGenParameterSpec
import android.security.keystore.KeyProperties.BLOCK_MODE_GCM
import android.security.keystore.KeyProperties.ENCRYPTION_PADDING_NONE
import android.security.keystore.KeyProperties.KEY_ALGORITHM_AES
import android.security.keystore.KeyProperties.PURPOSE_DECRYPT
import android.security.keystore.KeyProperties.PURPOSE_ENCRYPT
import ladderbook.core.KeyStore
import ladderbook.core.PortTrouble
import java.io.File
import java.io.IOException
import java.security.GeneralSecurityException
import java.security.ProviderException
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

private const val STORE = "AndroidKeyStore"
private const val ALIAS = "ladderbook"
private const val IV_BYTES = 12
private const val TAG_BITS = 128

/** The book's key, sealed under one that the phone's hardware never gives out. */
class KeyInKeystore(context: Context) : KeyStore {
    private val file = File(context.noBackupFilesDir, "book.key")

    override fun key(): String? = told {
        if (!file.exists()) return@told null
        val sealed = file.readBytes()
        val cipher = cipher().apply { init(Cipher.DECRYPT_MODE, sealing(), GCMParameterSpec(TAG_BITS, sealed, 0, IV_BYTES)) }
        cipher.doFinal(sealed, IV_BYTES, sealed.size - IV_BYTES).decodeToString()
    }

    override fun keep(key: String) = told {
        val cipher = cipher().apply { init(Cipher.ENCRYPT_MODE, sealing()) }
        val part = File(file.path + ".part")
        part.outputStream().use {
            it.write(cipher.iv + cipher.doFinal(key.encodeToByteArray()))
            it.fd.sync()
        }
        if (!part.renameTo(file)) throw IOException(file.path)
    }

    private fun cipher() = Cipher.getInstance("AES/GCM/NoPadding")

    private fun sealing(): SecretKey {
        val store = java.security.KeyStore.getInstance(STORE).apply { load(null) }
        (store.getKey(ALIAS, null) as SecretKey?)?.let { return it }
        val asked = KeyGenParameterSpec.Builder(ALIAS, PURPOSE_ENCRYPT or PURPOSE_DECRYPT)
            .setBlockModes(BLOCK_MODE_GCM).setEncryptionPaddings(ENCRYPTION_PADDING_NONE).setKeySize(256).build()
        return KeyGenerator.getInstance(KEY_ALGORITHM_AES, STORE).apply { init(asked) }.generateKey()
    }

    private fun <T> told(work: () -> T): T = try {
        work()
    } catch (error: GeneralSecurityException) {
        throw PortTrouble.Failed(error.toString())
    } catch (error: ProviderException) {
        // What a phone's key store throws where its hardware fails it.
        throw PortTrouble.Failed(error.toString())
    } catch (error: IOException) {
        throw PortTrouble.Failed(error.toString())
    }
}
