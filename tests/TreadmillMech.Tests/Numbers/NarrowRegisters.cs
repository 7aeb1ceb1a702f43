using System.Diagnostics;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Tests.Numbers;

/// <summary>Runs one test of this assembly in a child process without 512-bit registers, or without any vectors.</summary>
internal static class NarrowRegisters
{
    private const string FileVariable = "TREADMILLMECH_DIGEST_FILE";

    /// <summary>What the child hands back, in two lines.</summary>
    internal static void Write(string digest)
    {
        string? file = Environment.GetEnvironmentVariable(FileVariable);
        Assert.NotNull(file);
        Assert.False(Vector512.IsHardwareAccelerated);
        File.WriteAllLines(file, ["512-bit off", digest]);
    }

    internal static async Task<string> RunAsync(
        Type type,
        string method,
        string file,
        string switchedOff = "DOTNET_EnableAVX512"
    )
    {
        string host = Environment.ProcessPath!;
        ProcessStartInfo start = new(host)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        if (Path.GetFileNameWithoutExtension(host) == "dotnet")
        {
            start.ArgumentList.Add(type.Assembly.Location);
        }

        start.ArgumentList.Add("-method");
        start.ArgumentList.Add($"{type.FullName}.{method}");
        start.ArgumentList.Add("-explicit");
        start.ArgumentList.Add("only");
        start.Environment[switchedOff] = "0";
        start.Environment[FileVariable] = file;

        using CancellationTokenSource limit = CancellationTokenSource.CreateLinkedTokenSource(
            TestContext.Current.CancellationToken
        );
        limit.CancelAfter(TimeSpan.FromSeconds(60));
        using Process child = Process.Start(start)!;
        Task<string> output = child.StandardOutput.ReadToEndAsync(CancellationToken.None);
        Task<string> error = child.StandardError.ReadToEndAsync(CancellationToken.None);
        bool inTime = true;
        try
        {
            await child.WaitForExitAsync(limit.Token);
        }
        catch (OperationCanceledException)
        {
            inTime = false;
            child.Kill(entireProcessTree: true);
        }

        string said = $"{await output}{Environment.NewLine}{await error}";
        Assert.True(inTime, $"child process not done in time:{Environment.NewLine}{said}");
        Assert.True(child.ExitCode == 0, $"child process exit code {child.ExitCode}:{Environment.NewLine}{said}");
        return said;
    }
}
