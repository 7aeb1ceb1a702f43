using System.Runtime.CompilerServices;

namespace TreadmillMech.Tests.Numbers;

public sealed class AlignedRowTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(64)]
    public void BeginsAtALineOfTheCache(int count)
    {
        // A collection may move the row: then another one is looked at.
        nint address;
        int collections;
        do
        {
            collections = GC.CollectionCount(0);
            address = Address(new AlignedRow<Real>(count));
        } while (collections != GC.CollectionCount(0));

        // 64 bytes: eight doubles of a 512-bit register.
        Assert.Equal(0, address % 64);
    }

    [Fact]
    public void HoldsEveryValueApart()
    {
        AlignedRow<Lanes> row = new(5);
        Assert.Equal(5, row.All.Length);
        Assert.All(row.All.ToArray(), value => Assert.Equal(default, value));
        for (int i = 0; i < 5; i++)
        {
            row[i] = i + 1.0;
        }

        for (int i = 0; i < 5; i++)
        {
            Assert.Equal((Lanes)(i + 1.0), row.All[i]);
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(5)]
    public void RefusesAPlaceOutside(int index)
    {
        AlignedRow<Real> row = new(5);
        Assert.Throws<ArgumentOutOfRangeException>(() => row[index]);
    }

    private static nint Address(AlignedRow<Real> row) => Unsafe.ByteOffset(ref Unsafe.NullRef<Real>(), ref row.First);
}
