global using TreadmillMech.Numbers;
global using Xunit;
