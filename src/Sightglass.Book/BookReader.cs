using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Checks;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Recordings;
using Sightglass.Book.Yaml;

namespace Sightglass.Book;

/// <summary>
/// Reads a class book: every <c>*.yaml</c> of a folder put together, with the texts of its <c>*.card</c> files. Reports everything it finds at once
/// (codes B001…B117 and Q001…Q009); hostile input is refused within the limits and never throws.
/// </summary>
public static class BookReader
{
    /// <summary>Reads the book in a folder.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="kinds">The kinds it may use.</param>
    /// <param name="found">Takes errors and warnings; paths in them are relative to the folder.</param>
    /// <param name="checks">Further checks, such as those of formulas; run on the class and on every road number once all names are known.</param>
    /// <param name="limits">How large a book may be.</param>
    /// <returns>The book, or null where there was an error.</returns>
    public static ClassBook? Read(string folder, KindCatalog kinds, DiagnosticList found, IEnumerable<BookCheck>? checks = null, YamlLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        limits ??= YamlLimits.Default;
        Findings findings = new(found, limits);
        BookFolder files = new(folder, limits, findings);
        files.Read();
        if (files.Yaml.Length == 0)
        {
            if (!findings.HasErrors)
            {
                findings.Add(BookMessages.NoFiles());
            }

            return null;
        }

        return Read(files.Yaml, files.Cards, kinds, findings, [.. checks ?? [], new PhotoCheck(folder).Run], limits, new(folder, limits, findings));
    }

    /// <summary>Reads a book from texts in memory.</summary>
    public static ClassBook? Read(
        IReadOnlyList<SourceText> yaml,
        IReadOnlyList<SourceText> cards,
        KindCatalog kinds,
        DiagnosticList found,
        IEnumerable<BookCheck>? checks = null,
        YamlLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(yaml);
        limits ??= YamlLimits.Default;
        return Read(yaml, cards, kinds, new Findings(found, limits), checks, limits);
    }

    private static ClassBook? Read(
        IReadOnlyList<SourceText> yaml, IReadOnlyList<SourceText> cards, KindCatalog kinds, Findings found, IEnumerable<BookCheck>? checks, YamlLimits limits, RecordingFolder? folder = null)
    {
        ReadContext context = new(found, kinds);
        Sections sections = new(SectionList.Book, context);
        Span? first = null;
        foreach (YamlNode document in YamlFiles.Read(yaml, found))
        {
            first ??= document.Span;
            sections.Add(document);
        }

        sections.Close();
        BookBuilder builder = new(sections, context, folder);
        ClassBook book = builder.Build(first ?? (yaml.Count > 0 ? yaml[0].Between(0, 0) : Span.None), cards);
        new CheckRun(book, context, [.. BookChecks.Default, .. checks ?? []]).Run(builder.Variants);
        return found.HasErrors ? null : book;
    }
}
