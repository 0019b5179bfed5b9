package ladderbook.app;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertTrue;

import android.app.Activity;
import android.graphics.Bitmap;
import android.graphics.Canvas;
import android.os.Looper;
import java.io.File;
import java.io.FileOutputStream;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.RuntimeEnvironment;
import org.robolectric.Shadows;
import org.robolectric.android.controller.ActivityController;
import org.robolectric.annotation.Config;
import org.robolectric.annotation.GraphicsMode;

/** The program as R8 leaves it, known only by the names that its manifest keeps: it still reaches the core and is reached by it. */
@RunWith(RobolectricTestRunner.class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = 35, qualifiers = "w390dp-h844dp-port-xhdpi")
public class MinifiedTest {
    private static final int WAITS = 200;
    private static final int COLOURS_OF_WORDS = 8;

    @Test
    public void aBookIsBegunOnANewPhoneAndItsFirstScreenIsDrawn() throws Exception {
        KeyStoreOnADesk.install();
        Class<? extends Activity> main = Class.forName("ladderbook.app.MainActivity").asSubclass(Activity.class);
        try (ActivityController<? extends Activity> phone = Robolectric.buildActivity(main).setup()) {
            File files = RuntimeEnvironment.getApplication().getFilesDir();
            Bitmap drawn = draw(phone.get());
            for (int waited = 0; waited < WAITS && colours(drawn).size() < COLOURS_OF_WORDS; waited++) {
                Thread.sleep(50);
                Shadows.shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(50));
                drawn = draw(phone.get());
            }
            try (FileOutputStream into = new FileOutputStream(new File(System.getProperty("pictures"), "minified.png"))) {
                drawn.compress(Bitmap.CompressFormat.PNG, 100, into);
            }
            assertTrue("the first screen was drawn", colours(drawn).size() >= COLOURS_OF_WORDS);
            assertTrue("the core made a book", new File(files, "book/book.db").exists());
            assertEquals("the core handed the key out to be kept", 1, KeyStoreOnADesk.KEYS.size());
        }
    }

    private static Bitmap draw(Activity activity) {
        var window = activity.getWindow().getDecorView();
        Bitmap drawn = Bitmap.createBitmap(window.getWidth(), window.getHeight(), Bitmap.Config.ARGB_8888);
        window.draw(new Canvas(drawn));
        return drawn;
    }

    private static Set<Integer> colours(Bitmap drawn) {
        int[] dots = new int[drawn.getWidth() * drawn.getHeight()];
        drawn.getPixels(dots, 0, drawn.getWidth(), 0, 0, drawn.getWidth(), drawn.getHeight());
        Set<Integer> colours = new HashSet<>();
        for (int dot : dots) colours.add(dot);
        return colours;
    }
}
