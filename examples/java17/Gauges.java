// Two gauges and a thermometer in Java 17, through its own foreign-function module; nothing else is needed. Run it from
// the root of the project:
// cargo build --release -p coldloop-c
// java --add-modules jdk.incubator.foreign --enable-native-access=ALL-UNNAMED examples/java17/Gauges.java target/release/libcoldloop_c.so
//
// From Java 22 on the same calls are in java.lang.foreign (Linker.nativeLinker(), Arena, MemorySegment).

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodType;
import java.nio.file.Path;
import jdk.incubator.foreign.CLinker;
import jdk.incubator.foreign.FunctionDescriptor;
import jdk.incubator.foreign.MemoryAccess;
import jdk.incubator.foreign.MemoryAddress;
import jdk.incubator.foreign.MemorySegment;
import jdk.incubator.foreign.ResourceScope;
import jdk.incubator.foreign.SymbolLookup;

final class Gauges {
    private static final int R134A = 1;
    private static final int DATUM_GAUGE = 2;

    /** A function of the library by its name; every one of these returns a status. */
    private static MethodHandle function(String name, Class<?>... parameters) {
        var layouts = new jdk.incubator.foreign.MemoryLayout[parameters.length];
        for (int i = 0; i < parameters.length; i++) {
            layouts[i] = parameters[i] == double.class ? CLinker.C_DOUBLE
                : parameters[i] == int.class ? CLinker.C_INT
                : parameters[i] == long.class ? CLinker.C_LONG
                : CLinker.C_POINTER;
        }
        return CLinker.getInstance().downcallHandle(
            SymbolLookup.loaderLookup().lookup(name).orElseThrow(),
            MethodType.methodType(int.class, parameters),
            FunctionDescriptor.of(CLinker.C_INT, layouts));
    }

    private static double superheatKelvin(double lineKelvin, double gaugePascal, double airPascal) throws Throwable {
        MethodHandle superheat = function("coldloop_superheat", int.class, double.class, int.class, double.class,
            double.class, MemoryAddress.class, MemoryAddress.class);
        try (ResourceScope scope = ResourceScope.newConfinedScope()) {
            MemorySegment answer = MemorySegment.allocateNative(CLinker.C_DOUBLE, scope);
            int status = (int) superheat.invokeExact(R134A, lineKelvin, DATUM_GAUGE, gaugePascal, airPascal,
                answer.address(), MemoryAddress.NULL);
            if (status != 0) {
                throw new IllegalArgumentException("status " + status);
            }
            return MemoryAccess.getDouble(answer);
        }
    }

    private static final long ANSWER_MAX = 262_144; // COLDLOOP_ANSWER_MAX

    /** The report for people. */
    private static String report(String readingsJson) throws Throwable {
        MethodHandle report = function("coldloop_report", MemoryAddress.class, MemoryAddress.class, long.class,
            MemoryAddress.class, MemoryAddress.class);
        try (ResourceScope scope = ResourceScope.newConfinedScope()) {
            MemorySegment readings = CLinker.toCString(readingsJson, scope);
            MemorySegment text = MemorySegment.allocateNative(ANSWER_MAX, scope);
            int status = (int) report.invokeExact(readings.address(), text.address(), ANSWER_MAX, MemoryAddress.NULL,
                MemoryAddress.NULL);
            String answer = CLinker.toJavaString(text);
            if (status != 0) {
                throw new IllegalArgumentException(answer);
            }
            return answer;
        }
    }

    public static void main(String[] arguments) throws Throwable {
        System.load(Path.of(arguments[0]).toAbsolutePath().toString());
        System.out.printf("superheat %.1f K%n%n", superheatKelvin(285.15, 241_316.0, 83_524.0));
        System.out.print(report("""
            {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
             "conditions": {"ambient": "74 degF", "altitude": "1600 m"},
             "readings": {"low_side": "115 psig", "high_side": "125 psig", "vent": "72 degF"}}
            """));
    }
}
