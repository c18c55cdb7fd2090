global using AtRefusal = Headroom.Domain.Jobs.AtRefusal;
global using PoeType = Headroom.Domain.Catalogues.PoeType;
