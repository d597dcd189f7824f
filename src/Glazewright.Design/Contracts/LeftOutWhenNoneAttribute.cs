namespace Glazewright.Design.Contracts;

/// <summary>A part of the program that its file leaves out where there is none: it is younger than the first files.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class LeftOutWhenNoneAttribute : Attribute;
