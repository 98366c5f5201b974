namespace Sightglass.Book.Changes;

/// <summary>Writes a file whole or not at all: whoever reads it meanwhile sees the old one.</summary>
public static class WholeFile
{
    private static int s_halves;

    /// <summary>Writes beside it, onto the disk, and puts it into its place.</summary>
    public static void Write(string path, byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        string full = Path.GetFullPath(path);
        string beside = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{Environment.ProcessId}-{Interlocked.Increment(ref s_halves)}");
        try
        {
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(full))
            {
                File.SetUnixFileMode(beside, File.GetUnixFileMode(full));
            }

            File.Move(beside, full, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
