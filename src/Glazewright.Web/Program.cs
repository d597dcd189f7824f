using Glazewright.Store;
using Glazewright.Web.Serving;

string usualFolder = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "glazewright");
switch (ServeWish.Read(args, usualFolder, Environment.GetEnvironmentVariable("GLAZEWRIGHT_STORE")))
{
    case ServeReading.Refused refused:
        (refused.IsHelp ? Console.Out : Console.Error).WriteLine(refused.Words);
        return refused.IsHelp ? 0 : 2;
    case ServeReading.Read { Wish: var wish }:
        try
        {
            if (wish.AddAccount.Length > 0)
            {
                return AddAccount.Run(wish);
            }

            await using WebApplication app = WebServer.Build(wish, AppContext.BaseDirectory, TimeProvider.System);
            await WebServer.StockAsync(app.Services, Path.Combine(AppContext.BaseDirectory, "examples", "weather"));
            await app.StartAsync();
            Console.Out.WriteLine($"Glazewright is open at {wish.Outside?.PublicUrl.GetLeftPart(UriPartial.Authority) ?? app.Urls.First()} (jobs are kept in {wish.DataFolder}). Ctrl-C ends it.");
            await app.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception e) when (e is StoreTooNewException or FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(e is IOException
                ? $"It cannot be served: {e.Message} Right: another port with --urls, or a folder that you may write to with --data."
                : e.Message);
            return 2;
        }

    default:
        return 1;
}
