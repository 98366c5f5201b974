using Sightglass.Book.Kinds;
using Sightglass.Book.Tests.Committed;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Docs;

/// <summary>docs/kinds.md is made from the kind sheets.</summary>
public class KindPageTests
{
    [Fact]
    public void Page_OfTheRepository_IsMadeFromTheSheets() => RepositoryFile.AssertIs("docs/kinds.md", KindPage.Write(KindLibrary.Catalog));

    /// <summary>House rule: a kind says what it does and, where it has equations, where they are from.</summary>
    [Fact]
    public void Sheets_OfStoresAndPaths_NameTheSourceOfTheirEquations() =>
        Assert.Empty(KindLibrary.Catalog.Sheets.Where(k => k.Role is KindRole.Store or KindRole.Path && !k.Details.Contains("Source", StringComparison.Ordinal)).Select(k => k.Name));
}
