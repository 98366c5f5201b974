namespace Sightglass.Storage;

/// <summary>A data folder cannot be opened. Its message is for the person at the screen: which folder, what is wrong, what would be right.</summary>
public sealed class DataFolderException(string message, Exception? inner = null) : Exception(message, inner);
