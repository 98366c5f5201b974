using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>What every reader of a part needs: where findings go, which kinds there are, and the log of names that must exist.</summary>
internal sealed class ReadContext(Findings found, KindCatalog kinds)
{
    private readonly ImmutableArray<NameReference>.Builder _references = ImmutableArray.CreateBuilder<NameReference>();

    public Findings Found => found;

    public KindCatalog Kinds => kinds;

    /// <summary>The item being read, or empty.</summary>
    public string Owner { get; set; } = "";

    public ImmutableArray<NameReference> References => _references.ToImmutable();

    public void Add(Diagnostic diagnostic) => found.Add(diagnostic);

    /// <summary>Adds a finding about something that is missing, unless a part of the book could not be read: it may stand there.</summary>
    public void AddMissing(Diagnostic diagnostic)
    {
        if (!found.AnyDamage)
        {
            found.Add(diagnostic);
        }
    }

    /// <summary>Notes a name that must be declared somewhere.</summary>
    public void Uses(NameUse use, string name, Span span) => _references.Add(new(use, name, span, Owner));

    /// <summary>A context with the same kinds and findings whose references are kept apart.</summary>
    public ReadContext Within() => new(found, kinds);

    /// <summary>A context with the same kinds whose findings and references are kept apart.</summary>
    public ReadContext Apart(DiagnosticList notes) => new(found.Apart(notes), kinds);
}
