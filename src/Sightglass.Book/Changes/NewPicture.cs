using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>A picture as an entry of the section <c>pictures</c>.</summary>
public static class NewPicture
{
    public static BookAddition Of(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        List<YamlEntry> keys = [Key("file", picture.File), Key("shows", picture.Shows)];
        if (picture.Place is { } place)
        {
            keys.Add(Key("place", place));
        }

        if (picture.RoadNumbers is { IsEmpty: false } numbers)
        {
            keys.Add(new(NodeText.Text("road number"), new YamlList(default, [.. numbers.Select(NodeText.Text)])));
        }

        if (picture.Marks is { IsEmpty: false } marks)
        {
            keys.Add(new(NodeText.Text("marks"), new YamlList(default, [.. marks.Select(m => (YamlNode)new YamlMap(default, MarkKeys(m)))])));
        }

        return new("pictures", picture.Name, new(default, [.. keys]));
    }

    private static ImmutableArray<YamlEntry> MarkKeys(PictureMark m) =>
        [Key("item", m.Item), Key("x", Share(m.X)), Key("y", Share(m.Y)), Key("width", Share(m.Width)), Key("height", Share(m.Height))];

    private static YamlEntry Key(string name, string value) => new(NodeText.Text(name), NodeText.Text(value));

    /// <summary>Rounded down: two marks' ends that touch the picture's edge stay within it.</summary>
    private static string Share(double part) => $"{(Math.Floor((part * 1000) + 1e-6) / 10).ToString("0.0", CultureInfo.InvariantCulture)} %";
}
