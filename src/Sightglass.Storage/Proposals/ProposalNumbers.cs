namespace Sightglass.Storage.Proposals;

/// <summary>The numbers by which people name proposals: given once, from 1 for each book, and never to another one.</summary>
internal static class ProposalNumbers
{
    /// <summary>The next of a book, those that are added and not yet saved among them.</summary>
    public static int Next(RecordsContext records, string book) =>
        1 + Math.Max(records.Proposals.Where(p => p.Book == book).Max(p => (int?)p.Number) ?? 0, records.Proposals.Local.Where(p => p.Book == book).Select(p => p.Number).DefaultIfEmpty().Max());
}
