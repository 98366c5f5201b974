using System.Diagnostics;
using System.Globalization;
using Sightglass.Training.Questions;

namespace Sightglass.Storage.Tests;

/// <summary>A program that keeps writing is killed without warning, again and again: whatever it was told is kept is there.</summary>
public sealed class KillTests
{
    private const string Child = "SIGHTGLASS_KILL_CHILD";
    private const int Rounds = 5;

    [Fact]
    public async Task Writer_KilledAtAnyMoment_LosesNothingAcknowledged()
    {
        if (Environment.GetEnvironmentVariable(Child) is { } folder)
        {
            Write(folder);
            return;
        }

        using TemporaryFolder data = new();
        int told = 0;
        for (int round = 0; round < Rounds; round++)
        {
            told = Math.Max(told, await Killed(data, pauseMs: 20 + (90 * round)));
        }

        Assert.True(told > Rounds);
        using DataFolder opened = DataFolder.Open(data.Sub("data"));
        using RecordsContext records = opened.Records();
        HashSet<string> there = [.. records.Questions.Select(q => q.Text)];
        Assert.All(Enumerable.Range(1, told), i => Assert.Contains(i.ToString(CultureInfo.InvariantCulture), there));
        foreach (OpenQuestion question in records.Questions)
        {
            using FileStream? file = opened.Files.Open(question.Answer!);
            Assert.NotNull(file);
        }
    }

    /// <returns>The last number that was acknowledged.</returns>
    private static async Task<int> Killed(TemporaryFolder data, int pauseMs)
    {
        string acknowledged = data.Sub("acknowledged");
        long before = File.Exists(acknowledged) ? new FileInfo(acknowledged).Length : 0;
        ProcessStartInfo start = new("dotnet", ["exec", typeof(KillTests).Assembly.Location, "--filter-method", $"*{nameof(Writer_KilledAtAnyMoment_LosesNothingAcknowledged)}"]) { RedirectStandardOutput = true };
        start.Environment[Child] = data.Path;
        using Process child = Process.Start(start)!;
        Task<string> said = child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        for (int i = 0; i < 3000 && !child.HasExited && !(File.Exists(acknowledged) && new FileInfo(acknowledged).Length > before); i++)
        {
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        await Task.Delay(pauseMs, TestContext.Current.CancellationToken);
        Assert.False(child.HasExited, await Told(said, child));
        child.Kill();
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
        string[] whole = (await File.ReadAllTextAsync(acknowledged, TestContext.Current.CancellationToken)).Split('\n')[..^1];
        return int.Parse(whole[^1], CultureInfo.InvariantCulture);
    }

    private static async Task<string> Told(Task<string> said, Process child) => child.HasExited ? await said : "";

    private static void Write(string folder)
    {
        using DataFolder data = DataFolder.Open(Path.Combine(folder, "data"));
        using RecordsContext before = data.Records();
        int number = before.Questions.Count();
        using FileStream acknowledged = new(Path.Combine(folder, "acknowledged"), FileMode.Append, FileAccess.Write, FileShare.Read, bufferSize: 0);
        while (true)
        {
            number++;
            string text = number.ToString(CultureInfo.InvariantCulture);
            string file = data.Files.Put(System.Text.Encoding.UTF8.GetBytes(text));
            using RecordsContext records = data.Records();
            records.Add(new OpenQuestion { Id = Guid.NewGuid(), Book = "a book", Text = text, AskedBy = "", AskedAt = DateTimeOffset.UnixEpoch, Owner = "somebody", Due = new(2028, 2, 29), Answer = file });
            records.SaveChanges();
            acknowledged.Write(System.Text.Encoding.UTF8.GetBytes(text + "\n"));
        }
    }
}
