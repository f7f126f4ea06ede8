// Two gauges and a thermometer in C#, through P/Invoke. Run it from the root of the project, after
// bindings/c/install --prefix DIR:
// LD_LIBRARY_PATH=DIR/lib dotnet run --project examples/csharp
//
// Written by the documentation and neither compiled nor run by the tests: they ask for no .NET SDK.

using System;
using System.Runtime.InteropServices;
using System.Text;

internal static partial class Gauges
{
    private const uint R134A = 1;
    private const uint DatumGauge = 2;

    [LibraryImport("coldloop", EntryPoint = "coldloop_superheat")]
    private static partial uint Superheat(uint refrigerant, double suctionLineK, uint datum, double pressurePa,
        double airPaAbs, out double superheatK, IntPtr error);

    [LibraryImport("coldloop", EntryPoint = "coldloop_report", StringMarshalling = StringMarshalling.Utf8)]
    private static partial uint Report(string readingsJson, byte[]? report, nuint capacity, out nuint length,
        IntPtr error);

    private const int AnswerMax = 262_144; // COLDLOOP_ANSWER_MAX

    /// <summary>The report for people.</summary>
    private static string Report(string readingsJson)
    {
        byte[] text = new byte[AnswerMax];
        uint status = Report(readingsJson, text, (nuint)text.Length, out nuint length, IntPtr.Zero);
        string answer = Encoding.UTF8.GetString(text, 0, (int)length);
        return status == 0 ? answer : throw new ArgumentException(answer);
    }

    private static int Main()
    {
        if (Superheat(R134A, 285.15, DatumGauge, 241_316.0, 83_524.0, out double superheatK, IntPtr.Zero) != 0)
            return 1;
        Console.WriteLine($"superheat {superheatK:F1} K\n");
        Console.Write(Report(
            """
            {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
             "conditions": {"ambient": "74 degF", "altitude": "1600 m"},
             "readings": {"low_side": "115 psig", "high_side": "125 psig", "vent": "72 degF"}}
            """));
        return 0;
    }
}
