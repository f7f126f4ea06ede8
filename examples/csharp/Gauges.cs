// Two gauges and a thermometer in C#, through the P/Invoke declarations of bindings/csharp. From the root of the project, after
// bindings/c/install --prefix DIR, with Mono:
//
//     mcs -unsafe -out:target/Gauges.exe examples/csharp/Gauges.cs bindings/csharp/Coldloop.cs
//     LD_LIBRARY_PATH=DIR/lib mono target/Gauges.exe
//
// or with the .NET SDK: LD_LIBRARY_PATH=DIR/lib dotnet run --project examples/csharp

using System;
using System.Text;
using Coldloop;

internal static unsafe class Gauges
{
    /// <summary>The report for people.</summary>
    private static string Report(string readings)
    {
        byte[] given = Encoding.UTF8.GetBytes(readings + "\0");
        byte[] text = new byte[Native.AnswerMax];
        UIntPtr length;
        uint status;
        fixed (byte* from = given, to = text)
            status = Native.Report(from, to, (UIntPtr)text.Length, &length, null);
        string answer = Encoding.UTF8.GetString(text, 0, (int)length);
        if (status != (uint)Status.Ok)
            throw new ArgumentException(answer);
        return answer;
    }

    private static int Main()
    {
        double superheat_k;
        Error error = default(Error);
        error.size = (UIntPtr)sizeof(Error);
        uint status = Native.Superheat((uint)Refrigerant.R134a, 285.15, Native.DatumGauge, 241316.0, 83524.0, &superheat_k, &error);
        if (status != (uint)Status.Ok)
            return 1;
        Console.WriteLine("superheat {0:F1} K\n", superheat_k);
        Console.Write(Report(
            "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"}," +
            " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"}," +
            " \"readings\": {\"low_side\": \"115 psig\", \"high_side\": \"125 psig\", \"vent\": \"72 degF\"}}"));
        return 0;
    }
}
