// Two gauges and a thermometer in Java 22 or newer, by its foreign-function interface. Run it from the root of the project:
// cargo build --release -p coldloop-c
// java --enable-native-access=ALL-UNNAMED examples/java/Gauges.java target/release/libcoldloop_c.so
//
// examples/java17 has the same for Java 17.

import java.lang.foreign.Arena;
import java.lang.foreign.FunctionDescriptor;
import java.lang.foreign.Linker;
import java.lang.foreign.MemoryLayout;
import java.lang.foreign.MemorySegment;
import java.lang.foreign.SymbolLookup;
import java.lang.foreign.ValueLayout;
import java.lang.invoke.MethodHandle;
import java.nio.file.Path;

final class Gauges {
    private static final int R134A = 1;
    private static final int DATUM_GAUGE = 2;
    private static final long ANSWER_MAX = 262_144; // COLDLOOP_ANSWER_MAX

    private final SymbolLookup library;

    private Gauges(Path library) {
        this.library = SymbolLookup.libraryLookup(library, Arena.global());
    }

    /** A function of the library by its name; every one of these returns a status. */
    private MethodHandle function(String name, MemoryLayout... parameters) {
        return Linker.nativeLinker().downcallHandle(
            library.find(name).orElseThrow(),
            FunctionDescriptor.of(ValueLayout.JAVA_INT, parameters));
    }

    private double superheatKelvin(double lineKelvin, double gaugePascal, double airPascal) throws Throwable {
        MethodHandle superheat = function("coldloop_superheat", ValueLayout.JAVA_INT, ValueLayout.JAVA_DOUBLE,
            ValueLayout.JAVA_INT, ValueLayout.JAVA_DOUBLE, ValueLayout.JAVA_DOUBLE, ValueLayout.ADDRESS, ValueLayout.ADDRESS);
        try (Arena arena = Arena.ofConfined()) {
            MemorySegment answer = arena.allocate(ValueLayout.JAVA_DOUBLE);
            int status = (int) superheat.invokeExact(R134A, lineKelvin, DATUM_GAUGE, gaugePascal, airPascal,
                answer, MemorySegment.NULL);
            if (status != 0) {
                throw new IllegalArgumentException("status " + status);
            }
            return answer.get(ValueLayout.JAVA_DOUBLE, 0);
        }
    }

    /** The report for people. */
    private String report(String readingsJson) throws Throwable {
        MethodHandle report = function("coldloop_report", ValueLayout.ADDRESS, ValueLayout.ADDRESS, ValueLayout.JAVA_LONG,
            ValueLayout.ADDRESS, ValueLayout.ADDRESS);
        try (Arena arena = Arena.ofConfined()) {
            MemorySegment text = arena.allocate(ANSWER_MAX);
            int status = (int) report.invokeExact(arena.allocateFrom(readingsJson), text, ANSWER_MAX,
                MemorySegment.NULL, MemorySegment.NULL);
            String answer = text.getString(0);
            if (status != 0) {
                throw new IllegalArgumentException(answer);
            }
            return answer;
        }
    }

    public static void main(String[] arguments) throws Throwable {
        Gauges gauges = new Gauges(Path.of(arguments[0]).toAbsolutePath());
        System.out.printf("superheat %.1f K%n%n", gauges.superheatKelvin(285.15, 241_316.0, 83_524.0));
        System.out.print(gauges.report("""
            {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
             "conditions": {"ambient": "74 degF", "altitude": "1600 m"},
             "readings": {"low_side": "115 psig", "high_side": "125 psig", "vent": "72 degF"}}
            """));
    }
}
