using System.Text;

namespace Sightglass.Cli.Tests;

/// <summary>A terminal that tells when the program has written and flushed something.</summary>
internal sealed class FirstAnswer : TextWriter
{
    private readonly StringBuilder _text = new();
    private readonly TaskCompletionSource<string> _whole = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public override Encoding Encoding => Encoding.UTF8;

    public Task<string> Whole => _whole.Task;

    public override void Write(char value) => _text.Append(value);

    public override void Flush() => _whole.TrySetResult(_text.ToString());
}
