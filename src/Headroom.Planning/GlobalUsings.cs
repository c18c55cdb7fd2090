global using PoeType = Headroom.Domain.Catalogues.PoeType;
