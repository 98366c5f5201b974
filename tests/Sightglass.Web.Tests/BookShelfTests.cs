using Sightglass.Book.Model;

namespace Sightglass.Web.Tests;

/// <summary>A book to look at: of a road number, alone or in a train.</summary>
public sealed class BookShelfTests
{
    [Theory]
    [InlineData("4101", "night mail", 7)]
    [InlineData("4107", "local train", 4)]
    [InlineData("4101", null, 1)]
    [InlineData("4101", "no such train", 1)]
    public void BookOf_TrainOrNone_HasItsVehicles(string road, string? train, int vehicles)
    {
        ClassBook book = Shelves.Curlew.BookOf(road, train);
        Assert.Equal(vehicles, book.Vehicles.Length);
        Assert.Equal(road, book.RoadNumberInUse);
        Assert.Same(book, Shelves.Curlew.BookOf(road, train));
    }

    [Fact]
    public void BookOf_UnknownRoadNumber_IsTheFirst() => Assert.Equal(Shelves.Curlew.RoadNumbers[0], Shelves.Curlew.BookOf("4999", null).RoadNumberInUse);
}
