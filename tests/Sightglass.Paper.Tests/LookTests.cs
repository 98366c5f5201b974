namespace Sightglass.Paper.Tests;

/// <summary>Not a check: writes the papers for a person to look at, where a folder is named.</summary>
public sealed class LookTests
{
    [Fact]
    public void Papers_ForAPerson_AreWrittenWhereAsked()
    {
        string? folder = Environment.GetEnvironmentVariable("SIGHTGLASS_LOOK");
        foreach (string name in Papers.Names)
        {
            byte[] file = Papers.Pdf(name);
            Assert.Equal("%PDF-"u8.ToArray(), file[..5]);
            if (folder is not null)
            {
                File.WriteAllBytes(Path.Combine(folder, name + ".pdf"), file);
            }
        }
    }
}
