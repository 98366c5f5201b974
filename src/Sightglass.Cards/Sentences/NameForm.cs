using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>One row of a language's table of ways to say names.</summary>
public sealed class NameForm(NameOperation operation, string pattern)
{
    public NameOperation Operation { get; } = operation;

    /// <summary>Words, with <c>{name}</c>, <c>{letter}</c>, <c>{noun}</c> or <c>{side}</c> as gaps.</summary>
    public ImmutableArray<string> Parts { get; } =
        [.. WordList.Of(pattern.Replace("}'s", "} 's", StringComparison.Ordinal)).Select(w => w.Text)];
}
