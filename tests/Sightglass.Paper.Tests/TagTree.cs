using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Sightglass.Paper.Tests;

/// <summary>An element of a PDF's structure, as PdfPig, a library that nobody here wrote, reads it.</summary>
/// <param name="Name">H1, P, LI…</param>
/// <param name="Alt">What it shows, or null.</param>
/// <param name="Scope">Of a table's head, or null.</param>
/// <param name="Own">The words marked as its own, in the order of its marks.</param>
/// <param name="Kids">Elements within it.</param>
internal sealed record TagTree(string Name, string? Alt, string? Scope, string Own, IReadOnlyList<TagTree> Kids)
{
    public IEnumerable<TagTree> All => Kids.SelectMany(k => k.All).Prepend(this);

    /// <summary>Its words and those within it, in the order of reading.</summary>
    public string Text => string.Concat(Own, string.Concat(Kids.Select(k => k.Text)));

    /// <summary>Where its own marks are: page from 1, and number of the mark.</summary>
    public IReadOnlyList<(int Page, int Mark)> Marks { get; init; } = [];

    public static TagTree Read(PdfDocument document)
    {
        DictionaryToken root = Get<DictionaryToken>(document, document.Structure.Catalog.CatalogDictionary, "StructTreeRoot");
        Dictionary<(IndirectReference, int), string> words = [];
        for (int i = 1; i <= document.NumberOfPages; i++)
        {
            Page page = document.GetPage(i);
            IndirectReference reference = ReferenceOf(document, i);
            foreach (MarkedContentElement marked in page.GetMarkedContents().Where(m => m.MarkedContentIdentifier >= 0))
            {
                words[(reference, marked.MarkedContentIdentifier)] = string.Concat(marked.Letters.Select(l => l.Value));
            }
        }

        return Read(document, root, words, default);
    }

    private static TagTree Read(PdfDocument document, DictionaryToken element, Dictionary<(IndirectReference, int), string> words, IndirectReference page)
    {
        page = element.TryGet(NameToken.Create("Pg"), out IndirectReferenceToken pg) ? pg.Data : page;
        List<TagTree> kids = [];
        List<(int, int)> marks = [];
        string own = "";
        foreach (IToken kid in Within(document, element))
        {
            if (kid is NumericToken mark)
            {
                own += words[(page, mark.Int)];
                marks.Add((PageOf(document, page), mark.Int));
            }
            else if (kid is DictionaryToken inner && inner.TryGet(NameToken.Create("MCID"), out NumericToken there))
            {
                IndirectReference on = inner.TryGet(NameToken.Create("Pg"), out IndirectReferenceToken other) ? other.Data : page;
                own += words[(on, there.Int)];
                marks.Add((PageOf(document, on), there.Int));
            }
            else if (kid is DictionaryToken child)
            {
                kids.Add(Read(document, child, words, page));
            }
        }

        string name = element.TryGet(NameToken.S, out NameToken s) ? s.Data : "root";
        string? alt = element.TryGet(NameToken.Create("Alt"), out IDataToken<string> text) ? text.Data : null;
        string? scope = element.TryGet(NameToken.A, out DictionaryToken a) && a.TryGet(NameToken.Create("Scope"), out NameToken named) ? named.Data : null;
        return new TagTree(name, alt, scope, own, kids) { Marks = marks };
    }

    private static IEnumerable<IToken> Within(PdfDocument document, DictionaryToken element)
    {
        if (!element.TryGet(NameToken.K, out IToken kids))
        {
            return [];
        }

        IToken direct = Direct(document, kids);
        return direct is ArrayToken array ? array.Data.Select(t => Direct(document, t)) : [direct];
    }

    private static IToken Direct(PdfDocument document, IToken token) => token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static T Get<T>(PdfDocument document, DictionaryToken from, string name)
        where T : class, IToken => (T)Direct(document, from.Data[name]);

    private static int PageOf(PdfDocument document, IndirectReference page) => Enumerable.Range(1, document.NumberOfPages).First(i => ReferenceOf(document, i).Equals(page));

    private static IndirectReference ReferenceOf(PdfDocument document, int page)
    {
        DictionaryToken pages = Get<DictionaryToken>(document, document.Structure.Catalog.CatalogDictionary, "Pages");
        return ((IndirectReferenceToken)Get<ArrayToken>(document, pages, "Kids").Data[page - 1]).Data;
    }
}
