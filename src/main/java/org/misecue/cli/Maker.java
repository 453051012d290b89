package org.misecue.cli;

import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/**
 * Makes the few helpers that picocli asks for. Its own factory first looks whether a language that is not here is on the
 * class path, and that opens every jar.
 */
final class Maker implements CommandLine.IFactory {

    @Override
    @SuppressWarnings("unchecked")
    public <K> K create(Class<K> type) throws Exception {
        if (type == List.class) {
            return (K) new ArrayList<>();
        }
        Constructor<K> constructor = type.getDeclaredConstructor();
        constructor.setAccessible(true);
        return constructor.newInstance();
    }
}
