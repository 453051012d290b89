package org.misecue.cli;

import java.awt.Desktop;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** The browser that the person uses. */
final class Browser {

    private Browser() {}

    /** Opens an address in it; where there is none, the printed address has to do. */
    static void open(String address) {
        for (List<String> command : commands(address)) {
            try {
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                return;
            } catch (IOException e) {
                // the next one may be there
            }
        }
        byDesktop(address);
    }

    private static List<List<String>> commands(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return List.of(List.of("open", address));
        }
        if (system.contains("win")) {
            return List.of(List.of("rundll32", "url.dll,FileProtocolHandler", address));
        }
        return List.of(List.of("xdg-open", address));
    }

    private static void byDesktop(String address) {
        try {
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(URI.create(address));
            }
        } catch (IOException | UnsupportedOperationException e) {
            // the address is printed
        }
    }
}
