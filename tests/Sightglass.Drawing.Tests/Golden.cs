namespace Sightglass.Drawing.Tests;

/// <summary>Compares a drawing with the kept one; SIGHTGLASS_KEEP=1 keeps the new one instead.</summary>
internal static class Golden
{
    public static void Check(string name, string text)
    {
        string kept = Path.Combine(AppContext.BaseDirectory, "Golden", name);
        if (Environment.GetEnvironmentVariable("SIGHTGLASS_KEEP") == "1")
        {
            string root = AppContext.BaseDirectory;
            while (!File.Exists(Path.Combine(root, "Sightglass.slnx")))
            {
                root = Path.GetDirectoryName(root)!;
            }

            File.WriteAllText(Path.Combine(root, "tests", "Sightglass.Drawing.Tests", "Golden", name), text);
            return;
        }

        Assert.Equal(File.ReadAllText(kept).ReplaceLineEndings("\n"), text);
    }
}
