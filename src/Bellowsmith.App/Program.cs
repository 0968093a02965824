using Bellowsmith.App.Commands;

return Commands.Run(args);
