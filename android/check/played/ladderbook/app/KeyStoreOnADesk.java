package ladderbook.app;

import android.security.keystore.KeyGenParameterSpec;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.Key;
import java.security.KeyStoreSpi;
import java.security.NoSuchAlgorithmException;
import java.security.NoSuchProviderException;
import java.security.Provider;
import java.security.SecureRandom;
import java.security.Security;
import java.security.cert.Certificate;
import java.security.spec.AlgorithmParameterSpec;
import java.util.Collections;
import java.util.Date;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.crypto.KeyGenerator;
import javax.crypto.KeyGeneratorSpi;
import javax.crypto.SecretKey;

/** The keys of a phone that is played on a computer: in memory, where a phone has them in its hardware. The sealing with them is real. */
public final class KeyStoreOnADesk extends Provider {
    /** The keys that were made, by name. */
    public static final Map<String, Key> KEYS = new HashMap<>();

    private static final String NAME = "AndroidKeyStore";

    private KeyStoreOnADesk() {
        super(NAME, "1", "keys in memory");
        putService(new Service(this, "KeyStore", NAME, Keys.class.getName(), null, null));
        putService(new Service(this, "KeyGenerator", "AES", Maker.class.getName(), null, null));
    }

    /** Puts it, empty, where Android has its own. */
    public static void install() {
        KEYS.clear();
        Security.removeProvider(NAME);
        Security.addProvider(new KeyStoreOnADesk());
    }

    /** Makes a key as it is asked for, and keeps it under its name. */
    public static final class Maker extends KeyGeneratorSpi {
        private KeyGenParameterSpec asked;

        @Override
        protected void engineInit(AlgorithmParameterSpec asked, SecureRandom random) {
            this.asked = (KeyGenParameterSpec) asked;
        }

        @Override
        protected SecretKey engineGenerateKey() {
            try {
                KeyGenerator maker = KeyGenerator.getInstance("AES", "SunJCE");
                maker.init(asked.getKeySize());
                SecretKey key = maker.generateKey();
                KEYS.put(asked.getKeystoreAlias(), key);
                return key;
            } catch (NoSuchAlgorithmException | NoSuchProviderException error) {
                throw new IllegalStateException(error);
            }
        }

        @Override
        protected void engineInit(SecureRandom random) {
            throw new UnsupportedOperationException();
        }

        @Override
        protected void engineInit(int size, SecureRandom random) {
            throw new UnsupportedOperationException();
        }
    }

    /** The store: keys by name, no certificates. */
    public static final class Keys extends KeyStoreSpi {
        @Override
        public Key engineGetKey(String alias, char[] password) {
            return KEYS.get(alias);
        }

        @Override
        public void engineLoad(InputStream from, char[] password) {}

        @Override
        public boolean engineContainsAlias(String alias) {
            return KEYS.containsKey(alias);
        }

        @Override
        public boolean engineIsKeyEntry(String alias) {
            return KEYS.containsKey(alias);
        }

        @Override
        public Enumeration<String> engineAliases() {
            return Collections.enumeration(List.copyOf(KEYS.keySet()));
        }

        @Override
        public int engineSize() {
            return KEYS.size();
        }

        @Override
        public void engineDeleteEntry(String alias) {
            KEYS.remove(alias);
        }

        @Override
        public Certificate[] engineGetCertificateChain(String alias) {
            return null;
        }

        @Override
        public Certificate engineGetCertificate(String alias) {
            return null;
        }

        @Override
        public Date engineGetCreationDate(String alias) {
            return null;
        }

        @Override
        public boolean engineIsCertificateEntry(String alias) {
            return false;
        }

        @Override
        public String engineGetCertificateAlias(Certificate of) {
            return null;
        }

        @Override
        public void engineSetKeyEntry(String alias, Key key, char[] password, Certificate[] chain) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void engineSetKeyEntry(String alias, byte[] key, Certificate[] chain) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void engineSetCertificateEntry(String alias, Certificate certificate) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void engineStore(OutputStream into, char[] password) {
            throw new UnsupportedOperationException();
        }
    }
}
