namespace Sightglass.Book.Yaml;

/// <summary>What the line scanner finds wrong with a text before it is parsed.</summary>
internal enum ScanFault
{
    Tab,
    Control,
    OpenDoubleQuote,
    OpenSingleQuote,
    OpenBracket,
    OpenBrace,
    WrongCloser,
    NoColon,
    AfterValue,
    TooDeep,
}
