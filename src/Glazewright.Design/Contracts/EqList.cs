using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Glazewright.Design.Contracts;

/// <summary>An immutable list that is equal to another when its elements are. The only collection stage records hold.</summary>
/// <typeparam name="T">Element; itself immutable.</typeparam>
[CollectionBuilder(typeof(EqList), nameof(EqList.Create))]
public sealed class EqList<T> : IReadOnlyList<T>, IEquatable<EqList<T>>
{
    private readonly ImmutableArray<T> _items;

    internal EqList(ImmutableArray<T> items) => _items = items;

    /// <summary>The list with nothing in it.</summary>
    public static EqList<T> Empty { get; } = new(ImmutableArray<T>.Empty);

    /// <inheritdoc/>
    public int Count => _items.Length;

    /// <inheritdoc/>
    public T this[int index] => _items[index];

    /// <summary>The elements as a span, for loops.</summary>
    public ReadOnlySpan<T> Span => _items.AsSpan();

    /// <inheritdoc/>
    public bool Equals(EqList<T>? other) =>
        ReferenceEquals(this, other) || (other is not null && _items.AsSpan().SequenceEqual(other._items.AsSpan()));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as EqList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T item in _items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public override string ToString() => "[" + string.Join(", ", _items) + "]";

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes <see cref="EqList{T}"/> values.</summary>
public static class EqList
{
    /// <summary>A list of these elements, copied.</summary>
    /// <typeparam name="T">Element.</typeparam>
    /// <param name="items">The elements in order.</param>
    /// <returns>The list.</returns>
    public static EqList<T> Create<T>(ReadOnlySpan<T> items) =>
        items.IsEmpty ? EqList<T>.Empty : new EqList<T>([.. items]);

    /// <summary>A list of these elements, copied.</summary>
    /// <typeparam name="T">Element.</typeparam>
    /// <param name="items">The elements in order.</param>
    /// <returns>The list.</returns>
    public static EqList<T> ToEqList<T>(this IEnumerable<T> items) => new([.. items]);

    /// <summary>Takes an array that nobody else holds without copying it.</summary>
    /// <typeparam name="T">Element.</typeparam>
    /// <param name="items">The array; the caller must drop it.</param>
    /// <returns>The list.</returns>
    public static EqList<T> Own<T>(T[] items) => new(ImmutableCollectionsMarshal(items));

    private static ImmutableArray<T> ImmutableCollectionsMarshal<T>(T[] items) =>
        System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(items);
}
