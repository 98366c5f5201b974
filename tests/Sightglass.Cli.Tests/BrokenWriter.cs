using System.Text;

namespace Sightglass.Cli.Tests;

/// <summary>A terminal that cannot be written to.</summary>
internal sealed class BrokenWriter : TextWriter
{
    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => throw new InvalidOperationException("It is broken.");
}
